package beltmark.people.intake;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Rows of cells as spreadsheets write them: RFC 4180, also with a byte order mark, any line ends, and a semicolon or a tab
 * instead of the comma.
 */
final class RosterFile {

    private static final String BYTE_ORDER_MARK = "\uFEFF";
    private static final String FORMULA_STARTS = "=+-@";

    private RosterFile() {}

    /**
     * A row of the file.
     *
     * @param line the number of its first line, from 1
     * @param cells what is in it
     */
    record Line(long line, List<String> cells) {
        Line {
            cells = List.copyOf(cells);
        }
    }

    /** {@return the text of an uploaded file: UTF-8, or what spreadsheets of western offices write when it is not that} */
    static String decode(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            return new String(bytes, Charset.forName("windows-1252"));
        }
    }

    /** {@return the rows that are not empty; throws {@link IllegalArgumentException} when a quotation mark never ends} */
    static List<Line> read(String text) {
        String plain = text.replace(BYTE_ORDER_MARK, "").replaceAll("\\R", "\n").stripTrailing();
        List<Line> lines = new ArrayList<>();
        try (CSVParser parser = CSVParser.builder()
                .setReader(new StringReader(plain))
                .setFormat(format(plain))
                .get()) {
            long line = 1;
            for (CSVRecord row : parser) {
                lines.add(new Line(line, row.stream().map(RosterFile::cleaned).toList()));
                line = parser.getCurrentLineNumber() + 1;
            }
        } catch (UncheckedIOException | IllegalStateException | IOException e) {
            throw new IllegalArgumentException("not rows of cells", e);
        }
        return lines.stream()
                .filter(line -> line.cells().stream().anyMatch(cell -> !cell.isEmpty()))
                .toList();
    }

    private static CSVFormat format(String text) {
        String first = text.lines().filter(line -> !line.isBlank()).findFirst().orElse("");
        String delimiter = List.of(",", ";", "\t").stream()
                .max((a, b) -> Integer.compare(count(first, a), count(first, b)))
                .orElseThrow();
        return CSVFormat.RFC4180
                .builder()
                .setDelimiter(delimiter)
                .setIgnoreSurroundingSpaces(true)
                .setIgnoreEmptyLines(false)
                .get();
    }

    private static int count(String text, String part) {
        return text.split(java.util.regex.Pattern.quote(part), -1).length;
    }

    /** Takes away the apostrophe that our own exports put before what looks like a formula. */
    private static String cleaned(String cell) {
        String stripped = cell.strip().replaceAll("\\s+", " ");
        boolean guarded =
                stripped.length() > 1 && stripped.charAt(0) == '\'' && FORMULA_STARTS.indexOf(stripped.charAt(1)) >= 0;
        return guarded ? stripped.substring(1) : stripped;
    }
}
