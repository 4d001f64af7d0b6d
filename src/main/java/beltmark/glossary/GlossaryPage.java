package beltmark.glossary;

import beltmark.texts.Term;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/** All words of the trade, in the order of the alphabet. */
public record GlossaryPage(View view) implements Page {

    /** {@return the words} */
    public List<Term> terms() {
        return view.words().glossary().terms();
    }
}
