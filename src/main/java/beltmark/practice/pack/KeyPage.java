package beltmark.practice.pack;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * The key of a pack, to be printed: right answers and slips by code.
 *
 * @param view what all pages share
 * @param pack the pack
 * @param sheets what is on it
 */
public record KeyPage(View view, Pack pack, List<SheetView> sheets) implements Page {

    public KeyPage {
        sheets = List.copyOf(sheets);
    }
}
