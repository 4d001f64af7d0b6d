package beltmark.desk;

import beltmark.web.OperationId;
import beltmark.web.Option;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The form of an inspection.
 *
 * @param view what all pages share
 * @param form what was typed
 * @param machines the machines with a written procedure
 * @param people who may be included or inspect
 * @param results what may have come of it
 * @param faults a sentence for each field that keeps it from being recorded
 * @param operation for the form
 */
public record InspectionFormPage(
        View view,
        InspectionForm form,
        List<Option> machines,
        List<Option> people,
        List<Option> results,
        Map<String, String> faults,
        OperationId operation)
        implements Page {

    public InspectionFormPage {
        faults = Map.copyOf(faults);
    }

    /** {@return the fault of a field, null when it has none} */
    public @Nullable String fault(String field) {
        return faults.get(field);
    }
}
