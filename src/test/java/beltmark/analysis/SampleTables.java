package beltmark.analysis;

import beltmark.core.statistics.Proportion;
import beltmark.core.statistics.Response;
import beltmark.core.statistics.ResponseCounts;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** The tables of answers below {@code src/test/resources/analysis}, and random ones. */
public final class SampleTables {

    private static final List<Response> ALL = List.of(Response.RIGHT, Response.WRONG, Response.NOT_REACHED);

    private SampleTables() {}

    /** {@return the counts of a table by its name in the files of expected values} */
    public static ResponseCounts get(String name) {
        return name.equals("five-items")
                ? fiveItems()
                : read("/analysis/" + name + ".csv").counts();
    }

    /** {@return a table typed into a test, rows parted by blanks} */
    static ResponseCounts typed(String rows) {
        return table(rows.replace(' ', '\n')).counts();
    }

    static ResponseTable table(String text) {
        return read(new StringReader(text));
    }

    private static ResponseTable read(String resource) {
        return read(open(resource));
    }

    private static ResponseTable read(Reader text) {
        try (text) {
            return ResponseReader.read(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Reader open(String resource) {
        InputStream in = Objects.requireNonNull(SampleTables.class.getResourceAsStream(resource));
        return new InputStreamReader(in, StandardCharsets.UTF_8);
    }

    /** Each pattern stands for as many people as its last column says. */
    private static ResponseCounts fiveItems() {
        ResponseCounts counts = new ResponseCounts(5);
        rows("/analysis/five-items.csv").forEach(row -> {
            List<Response> pattern = IntStream.rangeClosed(1, 5)
                    .mapToObj(item -> row.get("Q" + item).equals("1") ? Response.RIGHT : Response.WRONG)
                    .toList();
            Collections.nCopies(Integer.parseInt(row.get("Ob6")), pattern).forEach(counts::add);
        });
        return counts;
    }

    /** {@return the rows of a file by the names of its columns} */
    static Stream<CSVRecord> rows(String resource) {
        CSVFormat named = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = named.parse(open(resource))) {
            return parser.getRecords().stream();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@return answers of people of different ability, about one in ten left blank} */
    static List<List<Response>> random(int people, int items, long seed) {
        Random random = new Random(seed);
        return Stream.generate(() -> {
                    double ability = random.nextGaussian();
                    return IntStream.range(0, items)
                            .mapToObj(item -> random.nextInt(10) == 0
                                    ? ALL.get(2)
                                    : ALL.get(random.nextGaussian() + item / 4.0 - 1 < ability ? 0 : 1))
                            .toList();
                })
                .limit(people)
                .toList();
    }

    static ResponseCounts counted(List<List<Response>> answers) {
        ResponseCounts counts = new ResponseCounts(answers.get(0).size());
        answers.forEach(counts::add);
        return counts;
    }

    /** {@return the same counts, put together as totals that were kept by score} */
    static ResponseCounts retold(List<List<Response>> answers) {
        ResponseCounts counts = new ResponseCounts(answers.get(0).size());
        for (List<Response> row : answers) {
            int score = Collections.frequency(row, Response.RIGHT);
            counts.addPeople(score, 1);
            for (int item = 0; item < row.size(); item++) {
                counts.addItem(item, score, hits(row.get(item)));
            }
        }
        return counts;
    }

    private static Proportion hits(Response answer) {
        return new Proportion(answer == Response.RIGHT ? 1 : 0, answer == Response.NOT_REACHED ? 0 : 1);
    }

    /** {@return the table as text, with a header and a first column that tells who it is} */
    static String text(List<List<Response>> answers) {
        return "person,"
                + IntStream.rangeClosed(1, answers.get(0).size())
                        .mapToObj(item -> "q" + item)
                        .collect(Collectors.joining(","))
                + "\r\n"
                + answers.stream()
                        .map(row -> "x," + row.stream().map(SampleTables::cell).collect(Collectors.joining(",")))
                        .collect(Collectors.joining("\r\n"));
    }

    private static String cell(Response answer) {
        return switch (answer) {
            case RIGHT -> "1";
            case WRONG -> "0";
            case NOT_REACHED -> "";
        };
    }
}
