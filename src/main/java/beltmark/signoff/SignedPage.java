package beltmark.signoff;

import beltmark.core.units.Length;
import beltmark.recordbook.StoredEntry;
import beltmark.signoff.DemonstrationRecord.Measured;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What was signed, read back from the record book.
 *
 * @param view what all pages share
 * @param entry the record
 * @param body what it says
 */
public record SignedPage(View view, StoredEntry entry, DemonstrationRecord body) implements Page {

    /** {@return where the board has it among the person's other records} */
    public String evidencePath() {
        return "/board/" + entry.subject() + "/demonstration-" + body.card();
    }

    /** {@return the hardware in words} */
    public String rigName() {
        return view.text(
                "signoff.rig",
                "card",
                view.text("hardware.name." + body.card()),
                "tip",
                view.text("setup.tip." + body.tip()));
    }

    /** {@return which way round, in words} */
    public String orientation() {
        return view.text("setup.orientation." + body.orientation());
    }

    /** {@return the beginning of the hash that chains the record} */
    public String hashStart() {
        return entry.hash().hex().substring(0, 12);
    }

    /** {@return what was measured} */
    public List<Measured> measures() {
        return body.measures();
    }

    /** {@return what was measured and where, in words} */
    public String title(Measured measured) {
        return view.text("signoff.measure." + measured.measure() + "." + measured.side());
    }

    /** {@return a length, exactly} */
    public String exact(@Nullable Length length) {
        return length == null ? "" : new SignoffWords(view).exact(length);
    }
}
