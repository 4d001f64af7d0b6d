package beltmark.people.staff;

import java.util.Locale;

/** Why a change to a person is not made; each has a sentence in the texts. */
enum StaffRefusal {
    /** What was typed is no day. */
    NO_DAY,
    /** The day has not come yet. */
    FUTURE_DAY,
    /** The person was in no crew on that day. */
    NOT_HERE_THEN,
    /** The person was in that crew already on that day. */
    SAME_CREW,
    /** Somebody of that name is, or was, in that crew. */
    SAME_NAME,
    /** A later move is on record. */
    MOVED_LATER,
    /** The person had not left by that day. */
    NOT_LEFT_THEN,
    /** A person must have a role. */
    NO_ROLE,
    /** Nobody changes their own roles or leaves by their own hand, so that one admin always stays. */
    YOURSELF;

    /** {@return the word of the sentence} */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
