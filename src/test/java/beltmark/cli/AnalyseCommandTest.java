package beltmark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** The figures themselves are checked in {@code beltmark.analysis}; here is what the command makes of them. */
class AnalyseCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String CREW_A = "src/test/resources/analysis/crewA.csv";

    @TempDir
    private Path folder = Path.of("");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    // crewA: KR-20 .4472, Feldt -.8167 to .9348, from analysis/expected-test-stats.csv
    @Test
    void printsTheStatisticsAsJson() throws IOException {
        JsonNode told = analyse(CREW_A, "--cut", "5");

        assertEquals(5, told.at("/test/n").asInt());
        assertEquals(0.4472049689, told.at("/test/kr20").asDouble(), 1e-9);
        assertEquals(-0.8166617620, told.at("/test/feldt/low").asDouble(), 1e-9);
        assertEquals(5, told.at("/test/cut").asInt());
        assertEquals(4, told.at("/test/passed").asInt());
        assertTrue(told.at("/test/huynhKappa").isNumber());
        assertEquals("i8", told.at("/items/7/item").asText());
        assertEquals(0.7844645406, told.at("/items/7/correctedR").asDouble(), 1e-9);
    }

    @Test
    void whatIsNotDefinedIsNullWithItsReason() throws IOException {
        JsonNode told = analyse(CREW_A);

        assertTrue(told.at("/items/0/correctedR").isNull());
        assertEquals("constant item", told.at("/items/0/undefined/correctedR").asText());
        assertTrue(told.at("/test/huynhP0").isNull());
        assertEquals("no cut given", told.at("/test/undefined/huynhP0").asText());
    }

    @Test
    void saysHowBlanksCount() throws IOException {
        JsonNode told = analyse(file("a,b\n1,1\n0,\n1,0\n"));

        assertTrue(told.at("/rules/0").asText().startsWith("A blank means not reached."));
        assertEquals(2, told.at("/items/1/n").asInt());
        assertEquals(1, told.at("/items/1/notReached").asInt());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''                  | The file is empty",
                "a,b¶1,x¶            | Line 2, column 2 (b): \"x\" is not an answer",
                "a,b¶1,0¶1¶          | Line 3 has 1 cell; the first has 2.",
                "person,a¶           | There is a header and no row",
                "person¶Ana¶         | There is one column, and it names people",
                "a,b¶1,\"0¶          | Line 2: a quotation mark is not closed"
            })
    void saysWhatIsWrongWithAFile(String text, String sentence) throws IOException {
        assertEquals(2, run(file(text.replace('¶', '\n'))));
        assertTrue(err.toString().startsWith(sentence), err::toString);
        assertEquals("", out.toString());
    }

    @ParameterizedTest
    @CsvSource({"-1, 2", "0, 0", "8, 0", "9, 2"})
    void takesACutFromNothingToEveryItem(int cut, int exit) {
        assertEquals(exit, run(CREW_A, "--cut", Integer.toString(cut)));
    }

    @Test
    void saysWhatIsWrongWithTheCommandLine() {
        assertEquals(2, run(CREW_A, "--cut", "9"));
        assertTrue(err.toString().startsWith("A cut of 9 is out of range; the test has 8 items"), err::toString);
        assertEquals(2, run(folder.resolve("none.csv").toString()));
        assertTrue(err.toString().contains("none.csv cannot be read"), err::toString);
    }

    private String file(String text) throws IOException {
        return Files.writeString(folder.resolve("answers.csv"), text).toString();
    }

    private JsonNode analyse(String... arguments) throws IOException {
        assertEquals(0, run(arguments), err::toString);
        return JSON.readTree(out.toString());
    }

    private int run(String... arguments) {
        return new CommandLine(new AnalyseCommand())
                .setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }
}
