package beltmark.procedure;

import beltmark.core.procedure.EnergyKind;
import beltmark.core.procedure.ProcedureCard;
import beltmark.procedure.ProcedureFormPage.EnergyRow;
import beltmark.procedure.ProcedureFormPage.Kind;
import beltmark.procedure.ProcedureFormPage.PointRow;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.View;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** Makes the pages of written procedures for one visitor. */
record ProcedurePages(View view) {

    private static final String ALL = "/procedures";

    ProceduresPage list(List<VersionRow> latest) {
        return new ProceduresPage(
                view,
                latest.stream()
                        .map(row -> new ProceduresPage.Row(ALL + "/" + row.procedure(), row.machine(), version(row)))
                        .toList(),
                view.has(Role.COORDINATOR));
    }

    private String version(VersionRow row) {
        return view.text(
                "procedure.page.version",
                "version",
                row.version(),
                "day",
                view.words().day(row.at()));
    }

    ProcedurePage show(Procedures.Found found) {
        boolean seesHolders = view.has(Role.COORDINATOR) || view.has(Role.SUPERVISOR) || view.has(Role.TRAINER);
        return new ProcedurePage(
                view,
                found.card(),
                version(found.versions().get(0)),
                found.versions().stream()
                        .map(row -> view.text(
                                "procedure.page.entered",
                                "version",
                                row.version(),
                                "person",
                                row.person(),
                                "time",
                                row.at(),
                                "record",
                                row.record()))
                        .toList(),
                seesHolders
                        ? found.holders().stream()
                                .map(holder -> holder(holder, found.card()))
                                .toList()
                        : List.of(),
                view.has(Role.COORDINATOR));
    }

    private ProcedurePage.HolderRow holder(Holder holder, ProcedureCard card) {
        boolean due = holder.version() < card.version();
        return new ProcedurePage.HolderRow(
                holder.person(),
                holder.crew(),
                view.text("procedure.page." + (due ? "due" : "up-to-date"), "version", holder.version()),
                due);
    }

    ProcedureFormPage enter(ProcedureForm form, Map<String, String> faults) {
        return form(ALL, view.text("procedure.form.title"), form, false, faults);
    }

    ProcedureFormPage change(String id, ProcedureForm form, Map<String, String> faults) {
        String title = view.text("procedure.form.change-title", "machine", form.machine());
        return form(ALL + "/" + id + "/change", title, form, true, faults);
    }

    private ProcedureFormPage form(
            String address, String title, ProcedureForm form, boolean changes, Map<String, String> faults) {
        Map<String, String> told = new HashMap<>();
        faults.forEach((field, fault) -> told.put(
                field,
                view.text(
                        "procedure.fault." + fault,
                        "fewest",
                        ProcedureCard.FEWEST_STEPS,
                        "most",
                        ProcedureCard.MOST_STEPS)));
        return new ProcedureFormPage(
                view,
                address,
                title,
                form,
                changes,
                IntStream.rangeClosed(1, ProcedureCard.MOST_POINTS)
                        .mapToObj(i -> point(i, form.points()))
                        .toList(),
                IntStream.rangeClosed(1, ProcedureCard.MOST_ENERGIES)
                        .mapToObj(i -> energy(i, form.energies()))
                        .toList(),
                Arrays.stream(EnergyKind.values())
                        .map(kind -> new Kind(kind.id(), view.text("procedure.kind." + kind.id())))
                        .toList(),
                told,
                OperationId.fresh());
    }

    private static PointRow point(int number, List<ProcedureCard.Point> points) {
        if (number > points.size()) {
            return new PointRow(number, "", "", "", "");
        }
        ProcedureCard.Point point = points.get(number - 1);
        return new PointRow(number, point.name(), point.kind(), point.location(), point.verification());
    }

    private static EnergyRow energy(int number, List<ProcedureCard.Energy> energies) {
        return number > energies.size()
                ? new EnergyRow(number, "", "")
                : new EnergyRow(
                        number,
                        energies.get(number - 1).kind(),
                        energies.get(number - 1).magnitude());
    }
}
