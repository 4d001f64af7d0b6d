package beltmark.sheet;

import beltmark.drawing.Drawing;
import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A set-up sheet, to be read and to be printed on one page.
 *
 * @param view what all pages share
 * @param form what was typed
 * @param heading hardware, tip and blade
 * @param refusals why figures are missing
 * @param warnings what is doubtful
 * @param rows the table to work from
 * @param groups all other figures
 * @param drawings what the figures mean
 * @param steps how they come about
 * @param operation names the keeping of this sheet
 * @param saved what the crew's list says of it; null when it is not kept
 * @param signOff where a sign-off from it starts; null for whoever may not sign, and without a chart for the blade
 * @param noSignOff why no sign-off starts from it; null when one does and for whoever may not sign
 */
public record SheetPage(
        View view,
        SheetForm form,
        String heading,
        List<String> refusals,
        List<String> warnings,
        List<Row> rows,
        List<Group> groups,
        List<Drawing> drawings,
        List<String> steps,
        OperationId operation,
        @Nullable SavedSheet saved,
        @Nullable String signOff,
        @Nullable String noSignOff)
        implements Page {

    public SheetPage {
        refusals = List.copyOf(refusals);
        warnings = List.copyOf(warnings);
        rows = List.copyOf(rows);
        groups = List.copyOf(groups);
        drawings = List.copyOf(drawings);
        steps = List.copyOf(steps);
    }

    /** {@return where it is, or the name of the page where no place was named} */
    public String title() {
        String place = form.text(SheetField.PLACE);
        return place.isEmpty() ? view.text("sheet.title") : view.text("sheet.title-place", "place", place);
    }

    /** {@return whether something is impossible or doubtful} */
    public boolean isDoubted() {
        return !refusals.isEmpty() || !warnings.isEmpty();
    }

    /** {@return what the page says, in which words of the trade are looked for} */
    public List<String> sentences() {
        List<String> sentences = new ArrayList<>(refusals);
        sentences.addAll(warnings);
        rows.forEach(row -> sentences.add(row.label()));
        for (Group group : groups) {
            sentences.add(group.heading());
            group.lines().forEach(line -> sentences.add(line.label()));
        }
        sentences.addAll(steps);
        return sentences;
    }

    /** {@return the fields to send on when the sheet is kept} */
    public Map<String, String> fields() {
        return form.kept();
    }

    /** {@return the address that carries the whole situation} */
    public String address() {
        return "/sheet/show?" + form.query();
    }

    /** {@return the form with everything still in it} */
    public String change() {
        return "/sheet?" + form.query();
    }
}
