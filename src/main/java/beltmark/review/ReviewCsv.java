package beltmark.review;

import beltmark.texts.Words;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/**
 * Finished sittings as a file after RFC 4180. A text that a spreadsheet would take for a formula gets an apostrophe in
 * front, which spreadsheets show as text.
 */
record ReviewCsv(Words words) {

    private static final String FORMULA_STARTS = "=+-@\t\r\0";

    private static final List<String> COLUMNS = List.of(
            "person",
            "crew",
            "finished-utc",
            "version",
            "right",
            "asked",
            "needed",
            "passed",
            "critical-missed",
            "record");

    String write(List<FinishedSitting> sittings) {
        StringBuilder file = new StringBuilder();
        try (CSVPrinter printer = new CSVPrinter(file, CSVFormat.RFC4180)) {
            printer.printRecord(COLUMNS.stream().map(column -> guarded(words.say("review.csv." + column))));
            for (FinishedSitting sitting : sittings) {
                printer.printRecord(cells(sitting));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("writing to memory failed", e);
        }
        return file.toString();
    }

    private Stream<Object> cells(FinishedSitting sitting) {
        QuestionNames names = new QuestionNames(words);
        return Stream.of(
                guarded(sitting.person()),
                guarded(sitting.crew()),
                sitting.finishedAt().toString(),
                sitting.version(),
                sitting.right(),
                sitting.asked(),
                sitting.needed(),
                guarded(words.say("review.csv." + (sitting.passed() ? "yes" : "no"))),
                guarded(sitting.criticalMisses().stream().map(names::name).collect(Collectors.joining("; "))),
                sitting.record());
    }

    static String guarded(String text) {
        return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }
}
