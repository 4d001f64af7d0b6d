package beltmark.people.intake;

import java.util.Locale;

/** The columns of a roster. */
enum RosterColumn {
    /** The person's name. */
    NAME(true),
    /** The name of the crew. */
    CREW(true),
    /** The job roles, a comma, semicolon or blank between; new hire when empty. */
    ROLES(false),
    /** The language of the pages; the reader's own when empty. */
    LANGUAGE(false),
    /** How lengths are shown; as for the reader when empty. */
    LENGTHS(false),
    /** The first day in the crew; today when empty. */
    SINCE(false);

    private final boolean required;

    RosterColumn(boolean required) {
        this.required = required;
    }

    boolean isRequired() {
        return required;
    }

    /** {@return the word that stands in the first row, in any language, and in the texts} */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
