package beltmark.sheet;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * The sheets that a crew has kept.
 *
 * @param view what all pages share
 * @param sheets the newest first
 */
public record SavedPage(View view, List<SavedSheet> sheets) implements Page {

    public SavedPage {
        sheets = List.copyOf(sheets);
    }

    /** {@return what a sheet is for: the place, or the hardware where no place was named} */
    public String name(SavedSheet sheet) {
        return sheet.place().isEmpty() ? view.text("hardware.name." + sheet.card()) : sheet.place();
    }

    /** {@return hardware, tip, who and when} */
    public String about(SavedSheet sheet) {
        return view.text(
                "sheet.saved-line",
                "card",
                view.text("hardware.name." + sheet.card()),
                "tip",
                view.text("setup.tip." + sheet.tip()),
                "person",
                sheet.person(),
                "at",
                sheet.at());
    }
}
