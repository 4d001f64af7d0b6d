package beltmark.certificate;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * Those whose certificates somebody looks after.
 *
 * @param view what all pages share
 * @param holders who, by name
 */
public record HoldersPage(View view, List<Holder> holders) implements Page {

    public HoldersPage {
        holders = List.copyOf(holders);
    }
}
