package beltmark.practice.pack;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * The sheets of a pack, to be printed: one for each person.
 *
 * @param view what all pages share
 * @param pack the pack
 * @param sheets what is on it
 */
public record SheetsPage(View view, Pack pack, List<SheetView> sheets) implements Page {

    public SheetsPage {
        sheets = List.copyOf(sheets);
    }
}
