package beltmark.review;

/** Addresses that pages of the review lead to. */
final class Addresses {

    private Addresses() {}

    static String sitting(long sitting) {
        return "/review/sittings/" + sitting;
    }

    /** The sittings of the same review as a file. */
    static String export(Scope scope) {
        return "/review/lockout.csv?paper=" + scope.quiz() + "&crew=" + scope.crew();
    }

    /** The same review with another page of people. */
    static String people(Scope scope, int page) {
        return "/review?paper=" + scope.quiz() + "&crew=" + scope.crew() + "&from="
                + scope.period().from() + "&to=" + scope.period().to() + "&page=" + page + "#people";
    }
}
