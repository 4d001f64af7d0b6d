package beltmark.desk;

import beltmark.web.OperationId;
import beltmark.web.Option;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The form of a retraining order.
 *
 * @param view what all pages share
 * @param form what was typed
 * @param people who may be sent
 * @param codes the reasons
 * @param faults a sentence for each field that keeps it from being recorded
 * @param operation for the form
 */
public record OrderFormPage(
        View view,
        OrderForm form,
        List<Option> people,
        List<Option> codes,
        Map<String, String> faults,
        OperationId operation)
        implements Page {

    public OrderFormPage {
        faults = Map.copyOf(faults);
    }

    /** {@return the fault of a field, null when it has none} */
    public @Nullable String fault(String field) {
        return faults.get(field);
    }
}
