package beltmark.web;

/**
 * Something went wrong, in one sentence and with the way on.
 *
 * @param view what all pages share
 * @param status the HTTP status
 * @param kind the word that the texts of this error are under
 * @param reference number under which the log tells more, empty when there is nothing to tell
 */
public record ErrorPage(View view, int status, String kind, String reference) implements Page {

    /** {@return the heading} */
    public String title() {
        return view.text("web.error." + kind + ".title");
    }

    /** {@return what happened and what to do} */
    public String sentence() {
        return view.text("web.error." + kind + ".sentence");
    }

    /** {@return whether the person can give somebody a number} */
    public boolean hasReference() {
        return !reference.isEmpty();
    }
}
