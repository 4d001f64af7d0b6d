package beltmark.desk;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * The list of who was trained when.
 *
 * @param view what all pages share
 * @param rows a row for each employee
 */
public record CertificationPage(View view, List<Row> rows) implements Page {

    /**
     * An employee.
     *
     * @param name the name
     * @param days the dates of training in words
     */
    public record Row(String name, String days) {}
}
