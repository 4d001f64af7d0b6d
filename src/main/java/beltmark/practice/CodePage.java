package beltmark.practice;

import beltmark.web.Page;
import beltmark.web.View;

/**
 * A problem code was typed that is none.
 *
 * @param view what all pages share
 * @param family the family it was typed for
 * @param typed what was typed
 */
public record CodePage(View view, String family, String typed) implements Page {

    /** {@return the heading} */
    public String title() {
        return view.text("problem.family." + family + ".title");
    }

    /** {@return why it was not taken} */
    public String error() {
        return view.text("practice.not-a-code", "example", "7K3M1Q");
    }
}
