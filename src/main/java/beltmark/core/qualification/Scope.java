package beltmark.core.qualification;

/**
 * Whom a fact concerns.
 *
 * @param reach one person, or everybody with the qualifications of a card, of a procedure, or of any kind
 * @param person the person's number; 0 when it is not about one
 * @param id the id of the card or procedure; empty otherwise
 */
public record Scope(Reach reach, long person, String id) {

    /** How far a fact reaches. */
    public enum Reach {
        /** One person, with all qualifications. */
        PERSON("person"),
        /** Everybody, with the qualifications for one hardware card. */
        CARD("card"),
        /** Everybody, with the qualifications whose rule names the procedure. */
        PROCEDURE("procedure"),
        /** Everybody, with all qualifications. */
        ALL("all");

        private final String id;

        Reach(String id) {
            this.id = id;
        }

        /** {@return the word it is stored under} */
        public String id() {
            return id;
        }
    }

    public Scope {
        if ((reach == Reach.PERSON) != (person != 0)) {
            throw new IllegalArgumentException("a scope " + reach.id() + " with the person " + person);
        }
        if ((reach == Reach.CARD || reach == Reach.PROCEDURE) == id.isEmpty()) {
            throw new IllegalArgumentException("a scope " + reach.id() + " with the id \"" + id + "\"");
        }
    }

    /** {@return one person} */
    public static Scope person(long person) {
        return new Scope(Reach.PERSON, person, "");
    }

    /** {@return everybody, on one hardware card} */
    public static Scope card(String card) {
        return new Scope(Reach.CARD, 0, card);
    }

    /** {@return everybody, with qualifications that hang on one procedure} */
    public static Scope procedure(String procedure) {
        return new Scope(Reach.PROCEDURE, 0, procedure);
    }

    /** {@return everybody} */
    public static Scope all() {
        return new Scope(Reach.ALL, 0, "");
    }
}
