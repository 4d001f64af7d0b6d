package beltmark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

class ProblemAndGradeTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    static Stream<String> families() {
        return Sample.content().families().stream().map(family -> family.id());
    }

    @ParameterizedTest
    @MethodSource("families")
    void whatProblemCallsRightGradeCallsRight(String family) throws IOException {
        for (String unit : new String[] {"in", "mm"}) {
            JsonNode problem = problem(family, unit);
            JsonNode verdicts = grade(answers(problem, unit, blank -> blank.path("right")));
            parts(verdicts)
                    .forEach(part -> assertEquals("right", part.path("verdict").asText(), part::toString));
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void whatProblemCallsASlipGradeNames(String family) throws IOException {
        JsonNode problem = problem(family, "in");
        JsonNode verdicts = grade(answers(problem, "in", blank -> blank.at("/slips/0/value")));
        JsonNode blank = verdicts.at("/parts/0/blanks/0");
        assertEquals("slip", blank.path("verdict").asText());
        assertEquals(problem.at("/parts/0/blanks/0/slips/0/id"), blank.path("slip"));
        assertEquals(problem.at("/parts/0/blanks/0/slips/0/says"), blank.path("says"));
    }

    @Test
    void saysWhyAnAnswerCouldNotBeRead() throws IOException {
        JsonNode verdicts = grade("""
                {"family": "spring-length", "code": "7K3M1Q", "answers": {"spring-length": {"both": "4 17/16"}}}""");
        assertEquals("improper-fraction", verdicts.at("/parts/0/blanks/0/why").asText());
    }

    @Test
    void anOwnFigureCarries() throws IOException {
        JsonNode problem = problem("bench", "mm");
        double left = problem.at("/situation/beltMarksMm/left").asDouble() - 25.4;
        double right = problem.at("/situation/beltMarksMm/right").asDouble();
        double offset = problem.at("/parts/2/blanks/1/rightMm").asDouble() - right;
        JsonNode verdicts =
                grade(String.format(java.util.Locale.ROOT, """
                {"family": "bench", "code": "7K3M1Q", "unit": "mm", "answers": {
                  "belt-mark": {"left": "%.1f", "right": "%.1f"}, "mount-mark": {"left": "%.1f", "right": "%.1f"}}}""", left, right, left + offset, right + offset));
        assertEquals("carried", verdicts.at("/parts/1/blanks/0/verdict").asText());
        assertEquals("right", verdicts.at("/parts/1/blanks/1/verdict").asText());
    }

    @ParameterizedTest
    @CsvSource({"no-such, 7K3M1Q, There is no family", "bench, '', is no problem code", "bench, 7K?, is no problem code"
    })
    void refusesWhatIsNoProblemWithASentence(String family, String code, String sentence) {
        int exit = run(new ProblemCommand(), "--family", family, "--code", code);
        assertEquals(2, exit);
        assertTrue(err.toString().contains(sentence), err::toString);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "nonsense | NOT_JSON | line 1",
                "{\"family\": \"bench\", \"family\": \"bench\"} | NOT_JSON | line 1",
                "{\"family\": \"bench\"} | NOT_ANSWERS | Wanted is",
                "5 | NOT_ANSWERS | Wanted is",
                "{\"family\": \"bench\", \"code\": \"7K3M1Q\", \"answers\": 5} | NOT_ANSWERS | Wanted is",
                "{\"family\": \"bench\", \"code\": \"7K3M1Q\", \"answers\": {\"belt-mark\": 5}} | NOT_ANSWERS | each part",
                "{\"family\": \"bench\", \"code\": \"7K3M1Q\", \"answers\": {}, \"more\": 1} | NOT_ANSWERS | Wanted is",
                "{\"family\": \"lathe\", \"code\": \"7K3M1Q\", \"answers\": {}} | UNKNOWN_FAMILY | known are bench",
                "{\"family\": \"bench\", \"code\": \"?\", \"answers\": {}} | NO_CODE | 1 to 11 letters",
                "{\"family\": \"bench\", \"code\": \"7K3M1Q\", \"unit\": \"ft\", \"answers\": {}} | UNKNOWN_UNIT | in, in32, mm",
                "{\"family\": \"bench\", \"code\": \"7K3M1Q\", \"answers\": {\"belt\": {}}} | UNKNOWN_PART"
                        + " | \"belt\"; known are belt-mark",
                "{\"family\": \"bench\", \"code\": \"7K3M1Q\", \"answers\": {\"belt-mark\": {\"lft\": \"1\"}}}"
                        + " | UNKNOWN_BLANK | \"lft\"; known are left, right"
            })
    void refusesAnswersThatAreNoneWithASentence(String json, String fault, String sentence) throws IOException {
        JsonNode refused = refused(json);
        assertEquals(fault, refused.path("refused").asText());
        String because = refused.path("because").asText();
        assertTrue(because.contains(sentence), because);
        assertFalse(because.contains("java"), because);
    }

    @ParameterizedTest
    @ValueSource(strings = {"nonsense", "{\"family\": \"bench\"", "{\"family\": \"bench", "{\"family\": \"bench\"}"})
    void gradesWhatFollowsRefusedAnswers(String bad) throws IOException {
        String good = "{\"family\": \"bench\", \"code\": \"7K3M1Q\",\n \"answers\": {}}\n";
        Path file = Files.writeString(folder.resolve("answers.json"), good + bad + "\n" + good + "{");
        assertEquals(2, run(new GradeCommand(), file.toString()));
        List<JsonNode> read = JSON.readerFor(JsonNode.class)
                .<JsonNode>readValues(out.toString())
                .readAll();
        assertEquals(4, read.size(), out::toString);
        assertEquals("bench", read.get(0).path("family").asText());
        assertEquals(2, read.get(1).path("document").asInt());
        assertEquals("bench", read.get(2).path("family").asText());
        assertEquals("NOT_JSON", read.get(3).path("refused").asText());
    }

    @ParameterizedTest
    @CsvSource({"nowhere.json, cannot be read", "., cannot be read", "empty.json, nothing to grade"})
    void saysInASentenceWhatItCannotRead(String name, String sentence) throws IOException {
        Files.writeString(folder.resolve("empty.json"), " \n");
        assertEquals(2, run(new GradeCommand(), folder.resolve(name).toString()));
        assertTrue(err.toString().contains(sentence), err::toString);
        assertEquals(1, err.toString().lines().count(), err::toString);
    }

    private JsonNode refused(String answers) throws IOException {
        Path file = Files.writeString(folder.resolve("answers.json"), answers);
        assertEquals(2, run(new GradeCommand(), file.toString()), out::toString);
        return JSON.readTree(out.toString());
    }

    private JsonNode problem(String family, String unit) throws IOException {
        assertEquals(0, run(new ProblemCommand(), "--family", family, "--code", "7K3M1Q", "--unit", unit));
        return JSON.readTree(out.toString());
    }

    private JsonNode grade(String answers) throws IOException {
        Path file = Files.writeString(folder.resolve("answers.json"), answers);
        assertEquals(0, run(new GradeCommand(), file.toString()), err::toString);
        return JSON.readTree(out.toString());
    }

    private int run(Object command, String... arguments) {
        out.getBuffer().setLength(0);
        return new CommandLine(command)
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    private static String answers(
            JsonNode problem, String unit, java.util.function.Function<JsonNode, JsonNode> answer) {
        var answers = JSON.createObjectNode();
        parts(problem).forEach(part -> {
            var typed = answers.putObject(part.path("id").asText());
            part.path("blanks")
                    .forEach(blank -> typed.put(
                            blank.path("id").asText(), answer.apply(blank).asText()));
        });
        return JSON.createObjectNode()
                .put("family", problem.path("family").asText())
                .put("code", problem.path("code").asText())
                .put("unit", unit)
                .<com.fasterxml.jackson.databind.node.ObjectNode>set("answers", answers)
                .toString();
    }

    private static Stream<JsonNode> parts(JsonNode json) {
        return StreamSupport.stream(json.path("parts").spliterator(), false);
    }
}
