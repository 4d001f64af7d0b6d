package beltmark.preview;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * The report on every family.
 *
 * @param view what all pages share
 * @param reports one for each family
 */
public record ReportPage(View view, List<FamilyReport> reports) implements Page {

    public ReportPage {
        reports = List.copyOf(reports);
    }

    /** {@return how many codes each report rests on} */
    public int codes() {
        return Reports.CODES;
    }
}
