package beltmark.web;

import java.util.List;

/**
 * A form was refused because the session had ended or the form was stale: says that nothing was stored, shows what was
 * typed, and leads on.
 *
 * @param view what all pages share
 * @param kind {@code ended} or {@code stale}
 * @param typed what was typed
 * @param next where to go on
 */
public record NotStoredPage(View view, String kind, List<Typed> typed, String next) implements Page {

    /** {@return the heading} */
    public String title() {
        return view.text("web.not-stored." + kind + ".title");
    }

    /** {@return what happened} */
    public String sentence() {
        return view.text("web.not-stored." + kind + ".sentence");
    }

    /** {@return the label of the way on} */
    public String action() {
        return view.text("web.not-stored." + kind + ".action");
    }
}
