package beltmark.review;

/** Addresses that pages of the review lead to. */
final class Addresses {

    private Addresses() {}

    static String sitting(long sitting) {
        return "/review/sittings/" + sitting;
    }

    /** The same review with another page of people. */
    static String people(Scope scope, int page) {
        return "/review?crew=" + scope.crew() + "&from=" + scope.period().from() + "&to="
                + scope.period().to() + "&page=" + page + "#people";
    }
}
