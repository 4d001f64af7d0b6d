package beltmark.procedure;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * All written procedures.
 *
 * @param view what all pages share
 * @param rows the procedures
 * @param mayEnter whether the visitor may enter one
 */
public record ProceduresPage(View view, List<Row> rows, boolean mayEnter) implements Page {

    /**
     * A procedure.
     *
     * @param address where it is
     * @param machine the machine
     * @param version its version and day, in words
     */
    public record Row(String address, String machine, String version) {}
}
