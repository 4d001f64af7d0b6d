package beltmark.signoff;

import beltmark.web.Page;
import beltmark.web.View;

/**
 * A demonstration cannot be signed at all.
 *
 * @param view what all pages share
 * @param refusal why
 */
public record RefusedPage(View view, Refusal refusal) implements Page {

    /** {@return why, and what to do} */
    public String sentence() {
        return view.text("signoff.refused." + refusal.id());
    }
}
