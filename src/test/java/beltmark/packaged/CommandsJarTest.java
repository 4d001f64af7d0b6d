package beltmark.packaged;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.packaged.Jar.Ran;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The commands of the jar, run in an empty folder far from its source. */
class CommandsJarTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    private Path folder = Path.of("");

    @Test
    void whatProblemPrintsAsRightGradeCallsRight() throws IOException {
        Ran problem = Jar.run(folder, "", "problem", "--family", "mount-marks", "--code", "7K3M1Q");
        assertEquals(0, problem.exit(), problem::err);
        Ran grade = Jar.run(folder, rightAnswers(JSON.readTree(problem.out())), "grade");
        assertEquals(0, grade.exit(), grade::err);
        assertEquals(
                List.of("right"),
                JSON.readTree(grade.out()).findValuesAsText("verdict").stream()
                        .distinct()
                        .toList());
    }

    @Test
    void computeAnswersEveryLineItReads() throws IOException {
        Ran compute =
                Jar.run(folder, "{\"id\": \"a\", \"quantity\": \"no-such\", \"given\": {}}\nnonsense\n", "compute");
        assertEquals(0, compute.exit(), compute::err);
        assertEquals(2, compute.out().lines().count());
        assertEquals(
                "a",
                JSON.readTree(compute.out().lines().toList().get(0)).path("id").asText());
    }

    @Test
    void verifyCannotTellWhereNoServerEverRan() {
        assertEquals(2, Jar.run(folder, "", "verify", "--data", "none").exit());
    }

    @ParameterizedTest
    @ValueSource(strings = {"--bogus", "serve --bogus", "serve --port many", "verify", ""})
    void anythingUnknownGetsTheUsageAndTwo(String line) {
        Ran ran = Jar.run(folder, "", line.isEmpty() ? new String[0] : line.split(" "));
        assertEquals(2, ran.exit());
        assertTrue(ran.err().contains("Usage: beltmark"), ran::err);
    }

    @ParameterizedTest
    @ValueSource(strings = {"serve", "compute", "problem", "grade", "verify"})
    void everyCommandAndOptionIsExplained(String command) {
        Ran ran = Jar.run(folder, "", command, "--help");
        assertEquals(0, ran.exit());
        assertTrue(ran.out().lines().count() > 3, ran::out);
        assertFalse(ran.out().lines().anyMatch(line -> line.matches(" +(-\\w, +)?--\\S+ *")), ran::out);
    }

    @Test
    void theJarCarriesItsLicencesAndNoSignatures() throws IOException {
        try (JarFile jar = new JarFile(System.getProperty("beltmark.jar", "target/beltmark.jar"))) {
            List<String> names = jar.stream().map(ZipEntry::getName).toList();
            assertTrue(names.containsAll(List.of("META-INF/LICENSE", "META-INF/NOTICE")));
            assertEquals(
                    List.of(),
                    names.stream()
                            .filter(name -> name.matches("META-INF/.*\\.(SF|RSA|DSA|EC)"))
                            .toList());
        }
    }

    private static String rightAnswers(JsonNode problem) {
        ObjectNode answers = JSON.createObjectNode();
        for (JsonNode part : problem.path("parts")) {
            ObjectNode typed = answers.putObject(part.path("id").asText());
            part.path("blanks")
                    .forEach(blank -> typed.put(
                            blank.path("id").asText(), blank.path("right").asText()));
        }
        return JSON.createObjectNode()
                .put("family", problem.path("family").asText())
                .put("code", problem.path("code").asText())
                .<ObjectNode>set("answers", answers)
                .toString();
    }
}
