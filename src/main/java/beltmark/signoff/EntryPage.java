package beltmark.signoff;

import beltmark.web.Page;
import beltmark.web.View;

/**
 * The sign-off form.
 *
 * @param view what all pages share
 * @param fitter who showed the set-up
 * @param rig the hardware
 * @param entry the form
 */
public record EntryPage(View view, Fitter fitter, Rig rig, EntryForm entry) implements Page {

    /** {@return the hardware in words} */
    public String rigName() {
        return new SignoffWords(view).rig(rig);
    }
}
