package beltmark.people;

import beltmark.web.Page;
import beltmark.web.View;
import org.jspecify.annotations.Nullable;

/**
 * Between the PIN that was given out and the first page: the person chooses one that nobody else knows.
 *
 * @param view what all pages share
 * @param person who is signing in
 * @param next where they were going
 * @param fault word of what is wrong with the chosen PIN, empty when nothing is
 * @param refused key of the sentence on the present PIN, null when there is nothing to say
 */
public record ChoosePinPage(
        View view,
        Person person,
        NextPath next,
        String fault,
        @Nullable String refused) implements Page {

    /** {@return the sentence on the chosen PIN, null when there is nothing to say} */
    public @Nullable String faultText() {
        return fault.isEmpty() ? null : view.text("people.pin-fault." + fault);
    }

    /** {@return the sentence on the PIN that was given out, null when there is nothing to say} */
    public @Nullable String refusedText() {
        return refused == null ? null : view.text(refused);
    }
}
