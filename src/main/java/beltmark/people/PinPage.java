package beltmark.people;

import beltmark.web.Page;
import beltmark.web.View;
import org.jspecify.annotations.Nullable;

/**
 * The third step of sign-in: the PIN.
 *
 * @param view what all pages share
 * @param person who is signing in
 * @param next where they were going
 * @param refused key of the sentence on the PIN that was typed, null when there is nothing to say
 */
public record PinPage(
        View view, Person person, NextPath next, @Nullable String refused) implements Page {

    /** {@return the sentence on the PIN that was typed, null when there is nothing to say} */
    public @Nullable String refusedText() {
        return refused == null ? null : view.text(refused);
    }
}
