package beltmark.procedure;

import beltmark.core.procedure.ProcedureCard;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * A written procedure in its latest version.
 *
 * @param view what all pages share
 * @param card what it says
 * @param version its version in words
 * @param versions the versions so far
 * @param holders who passed a paper that asked about it; none for those who may not see that
 * @param mayChange whether the visitor may change it
 */
public record ProcedurePage(
        View view,
        ProcedureCard card,
        String version,
        List<String> versions,
        List<HolderRow> holders,
        boolean mayChange)
        implements Page {

    /** {@return an energy in words} */
    public String kind(String kind) {
        return view.text("procedure.kind." + kind);
    }

    /** {@return the address of the form that changes it} */
    public String changeAddress() {
        return "/procedures/" + card.id() + "/change";
    }

    /**
     * Somebody who holds it.
     *
     * @param person the name
     * @param crew the crew
     * @param status up to date or due, in words
     * @param due whether due
     */
    public record HolderRow(String person, String crew, String status, boolean due) {}
}
