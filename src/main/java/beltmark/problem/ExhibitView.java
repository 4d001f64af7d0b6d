package beltmark.problem;

import java.util.List;

/**
 * A table as its page shows it.
 *
 * @param caption what it is
 * @param columns the headings
 * @param rows the cells, row by row
 */
public record ExhibitView(String caption, List<String> columns, List<List<String>> rows) {}
