package beltmark.procedure;

import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The form of a procedure.
 *
 * @param view what all pages share
 * @param address where it is sent
 * @param title the heading
 * @param form what was typed
 * @param changes whether a procedure is changed and not entered anew
 * @param points a row for each isolation point, some of them blank
 * @param energies a row for each energy, some of them blank
 * @param kinds the kinds of energy
 * @param faults a sentence for each field that keeps it from being kept
 * @param operation for the form
 */
public record ProcedureFormPage(
        View view,
        String address,
        String title,
        ProcedureForm form,
        boolean changes,
        List<PointRow> points,
        List<EnergyRow> energies,
        List<Kind> kinds,
        Map<String, String> faults,
        OperationId operation)
        implements Page {

    public ProcedureFormPage {
        faults = Map.copyOf(faults);
    }

    /** {@return the fault of a field, null when it has none} */
    public @Nullable String fault(String field) {
        return faults.get(field);
    }

    /** {@return what was typed as the machine} */
    public String machine() {
        return form.machine();
    }

    /** {@return what was typed as its use} */
    public String use() {
        return form.use();
    }

    /** {@return what was typed as the reason} */
    public String reason() {
        return form.reason();
    }

    /** {@return the steps as typed, one a line} */
    public String steps() {
        return form.steps();
    }

    /**
     * A row of a point.
     *
     * @param number its number
     * @param name its name
     * @param kind its kind of energy
     * @param location where it is
     * @param verification how it is verified
     */
    public record PointRow(int number, String name, String kind, String location, String verification) {}

    /**
     * A row of an energy.
     *
     * @param number its number
     * @param kind its kind
     * @param magnitude how much
     */
    public record EnergyRow(int number, String kind, String magnitude) {}

    /**
     * A kind of energy.
     *
     * @param id its id
     * @param name its name
     */
    public record Kind(String id, String name) {}
}
