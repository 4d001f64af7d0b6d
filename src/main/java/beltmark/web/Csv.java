package beltmark.web;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Rows as a file after RFC 4180. A text that a spreadsheet would take for a formula gets an apostrophe in front, which
 * spreadsheets show as text.
 */
public final class Csv {

    private static final String FORMULA_STARTS = "=+-@\t\r\0";

    private Csv() {}

    /** {@return the file: the names of its columns, then its rows} */
    public static String of(List<String> columns, List<? extends List<?>> rows) {
        StringBuilder file = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(file, CSVFormat.RFC4180)) {
            printer.printRecord(columns.stream().map(Csv::cell));
            for (List<?> row : rows) {
                printer.printRecord(row.stream().map(Csv::cell));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return file.toString();
    }

    private static Object cell(Object value) {
        return value instanceof String text ? guarded(text) : value;
    }

    static String guarded(String text) {
        return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
