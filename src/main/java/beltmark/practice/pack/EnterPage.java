package beltmark.practice.pack;

import beltmark.problem.BlankField;
import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * Where a trainer types in what somebody wrote on a sheet.
 *
 * @param view what all pages share
 * @param pack the pack
 * @param sheet the sheet
 * @param problems its problems with their fields
 * @param operation names the sending
 */
public record EnterPage(View view, Pack pack, Pack.Sheet sheet, List<EnteredProblem> problems, OperationId operation)
        implements Page {

    public EnterPage {
        problems = List.copyOf(problems);
    }

    /**
     * A problem of the sheet.
     *
     * @param number from 1
     * @param code its code
     * @param title the family's name
     * @param fields the blanks of all parts, in order
     */
    public record EnteredProblem(int number, String code, String title, List<BlankField> fields) {}
}
