package beltmark.signoff;

import beltmark.web.OperationId;
import beltmark.web.Option;
import beltmark.web.Page;
import beltmark.web.Told;
import beltmark.web.View;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * On which hardware somebody is assessor, and the form that appoints.
 *
 * @param view what all pages share
 * @param candidate who
 * @param lines where the person stands on each hardware today
 * @param form what was typed
 * @param fault why it was not recorded, or null
 * @param operation names the next appointment
 */
public record AssessorPage(
        View view,
        Fitter candidate,
        List<Assessors.Line> lines,
        AppointmentForm form,
        @Nullable String fault,
        OperationId operation)
        implements Page {

    public AssessorPage {
        lines = List.copyOf(lines);
    }

    /** {@return each hardware, and on what the person is its assessor today} */
    public List<Told> standings() {
        return lines.stream()
                .map(line -> new Told(view.text("hardware.name." + line.card().id()), standing(line)))
                .toList();
    }

    private String standing(Assessors.Line line) {
        AssessorStore.Found appointed = line.appointed();
        Basis basis = line.basis();
        if (basis != null && !basis.isAppointed()) {
            return view.text("signoff.assessor.qualified");
        }
        if (appointed == null) {
            return view.text("signoff.assessor.none");
        }
        return view.text(
                "signoff.assessor.appointed",
                "record",
                appointed.record(),
                "first",
                appointed.first(),
                "last",
                appointed.last());
    }

    /** {@return the hardware to pick from} */
    public List<Option> cards() {
        return lines.stream()
                .map(line -> new Option(
                        line.card().id(),
                        view.text("hardware.name." + line.card().id())))
                .toList();
    }

    /** {@return why it was not recorded, in words, or null} */
    public @Nullable String refused() {
        return fault == null ? null : view.text("signoff.assessor.fault." + fault);
    }

    /** {@return where the form is sent} */
    public String path() {
        return "/sign-off/assessors/" + candidate.id();
    }
}
