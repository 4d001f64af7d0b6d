package beltmark.analysis;

import beltmark.analysis.ResponseFault.Kind;
import beltmark.core.statistics.Response;
import beltmark.core.statistics.ResponseCounts;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads a table of answers: a row for each person, a column for each item, 1 for right, 0 for wrong, blank for not
 * reached; a header and a first column that tells who it is may be there ({@link Layout}). Cells are parted by commas,
 * or by semicolons or tabs if the first line has more of these. Rows are counted as they come and not kept.
 */
public final class ResponseReader {

    /** More items than any test has; the counts of so many take some 60 MB. */
    static final int MOST_ITEMS = 2000;

    /** How many rows show the layout. */
    private static final int SHOWING = 1000;

    private static final int LONGEST_FIRST_LINE = 1 << 20;

    private final CSVParser parser;
    private final List<CSVRecord> first = new ArrayList<>();
    private final List<Long> firstLines = new ArrayList<>();
    private final Layout layout;
    private final Response[] answers;
    private final ResponseCounts counts;
    private long blankRows;

    private ResponseReader(CSVParser parser) {
        this.parser = parser;
        Iterator<CSVRecord> records = parser.iterator();
        while (first.size() <= SHOWING && records.hasNext()) {
            firstLines.add(parser.getCurrentLineNumber());
            first.add(records.next());
        }
        if (first.isEmpty()) {
            throw new ResponseFault(Kind.EMPTY, Map.of());
        }
        layout = Layout.of(first);
        int items = first.get(0).size() - layout.firstItem();
        require(items > 0, Kind.NO_ITEMS, Map.of());
        require(items <= MOST_ITEMS, Kind.TOO_WIDE, Map.of("items", items, "most", MOST_ITEMS));
        answers = new Response[items];
        counts = new ResponseCounts(items);
    }

    /**
     * Reads a table to its end.
     *
     * @param text the file
     * @return the table; throws {@link ResponseFault} for the first thing that is wrong with it
     */
    public static ResponseTable read(Reader text) throws IOException {
        BufferedReader in = new BufferedReader(text, 1 << 16);
        passOverByteOrderMark(in);
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter(in))
                .setIgnoreEmptyLines(true)
                .get();
        try (CSVParser parser =
                CSVParser.builder().setReader(in).setFormat(format).get()) {
            return read(parser);
        }
    }

    private static ResponseTable read(CSVParser parser) throws IOException {
        try {
            return new ResponseReader(parser).table();
        } catch (UncheckedIOException e) {
            if (e.getCause() instanceof CSVException) {
                throw new ResponseFault(Kind.QUOTES, Map.of("line", parser.getCurrentLineNumber()));
            }
            throw e.getCause();
        }
    }

    private static void passOverByteOrderMark(BufferedReader in) throws IOException {
        in.mark(1);
        if (in.read() != '\uFEFF') {
            in.reset();
        }
    }

    private static char delimiter(BufferedReader in) throws IOException {
        in.mark(LONGEST_FIRST_LINE);
        int[] seen = new int[3];
        for (int i = 0, letter = in.read(); i < LONGEST_FIRST_LINE - 1 && letter >= 0 && letter != '\n'; i++) {
            int which = ",;\t".indexOf(letter);
            if (which >= 0) {
                seen[which]++;
            }
            letter = in.read();
        }
        in.reset();
        if (seen[0] >= Math.max(seen[1], seen[2])) {
            return ',';
        }
        return seen[1] >= seen[2] ? ';' : '\t';
    }

    private ResponseTable table() {
        for (int row = layout.hasHeader() ? 1 : 0; row < first.size(); row++) {
            add(first.get(row), firstLines.get(row));
        }
        for (CSVRecord record : parser) {
            add(record, parser.getCurrentLineNumber());
        }
        require(counts.scores().people() > 0, Kind.NO_ROWS, Map.of());
        CSVRecord top = first.get(0);
        return new ResponseTable(
                layout.hasHeader(),
                layout.hasId() ? Optional.of(layout.hasHeader() ? top.get(0).strip() : "") : Optional.empty(),
                IntStream.rangeClosed(1, counts.items()).mapToObj(this::name).toList(),
                blankRows,
                counts);
    }

    private void add(CSVRecord record, long line) {
        int wanted = answers.length + layout.firstItem();
        if (record.size() != wanted) {
            throw new ResponseFault(Kind.RAGGED, Map.of("line", line, "cells", record.size(), "wanted", wanted));
        }
        boolean blank = true;
        for (int item = 0; item < answers.length; item++) {
            answers[item] = answer(record, item, line);
            blank &= answers[item] == Response.NOT_REACHED;
        }
        counts.add(Arrays.asList(answers));
        blankRows += blank ? 1 : 0;
    }

    private Response answer(CSVRecord record, int item, long line) {
        String text = record.get(item + layout.firstItem()).strip();
        if (text.length() == 1 && text.charAt(0) == '1') {
            return Response.RIGHT;
        }
        if (text.length() == 1 && text.charAt(0) == '0') {
            return Response.WRONG;
        }
        if (text.isEmpty()) {
            return Response.NOT_REACHED;
        }
        int column = item + layout.firstItem() + 1;
        throw new ResponseFault(
                Kind.NO_RESPONSE, Map.of("line", line, "column", column, "name", name(item + 1), "cell", text));
    }

    /** The heading of an item, from 1; its number if it has none. */
    private String name(int item) {
        String heading = layout.hasHeader()
                ? first.get(0).get(item - 1 + layout.firstItem()).strip()
                : "";
        return heading.isEmpty() ? Integer.toString(item) : heading;
    }

    private static void require(boolean asWanted, Kind kind, Map<String, Object> values) {
        if (!asWanted) {
            throw new ResponseFault(kind, values);
        }
    }
}
