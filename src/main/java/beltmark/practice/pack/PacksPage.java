package beltmark.practice.pack;

import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The packs of a trainer, and the form for a new one.
 *
 * @param view what all pages share
 * @param families the ids of all families
 * @param receivers who can get a sheet
 * @param packs the last packs
 * @param form what was asked for
 */
public record PacksPage(View view, List<String> families, List<Receiver> receivers, List<PackLine> packs, PackForm form)
        implements Page {

    /** {@return the sentence of a field's fault, or null} */
    public @Nullable String fault(String field) {
        String key = form.faults().get(field);
        return key == null ? null : view.text(key, "most", Packs.MOST_OF_A_FAMILY);
    }

    /** {@return names the next sending} */
    public OperationId operation() {
        return OperationId.fresh();
    }
}
