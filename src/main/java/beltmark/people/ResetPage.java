package beltmark.people;

import beltmark.web.Page;
import beltmark.web.View;

/**
 * The PIN that was given out, shown this once.
 *
 * @param view what all pages share
 * @param person whose it is
 * @param pin six digits, empty when the same form had been sent before
 */
public record ResetPage(View view, Person person, String pin) implements Page {

    /** {@return whether there is a PIN to show} */
    public boolean isNew() {
        return !pin.isEmpty();
    }
}
