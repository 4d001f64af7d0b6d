package beltmark.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import picocli.CommandLine;

class ComputeCommandTest {

    private static List<String> run(String in, String... arguments) {
        InputStream before = System.in;
        StringWriter out = new StringWriter();
        try {
            System.setIn(new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)));
            int code = new CommandLine(new ComputeCommand())
                    .setOut(new PrintWriter(out))
                    .execute(arguments);
            assertEquals(0, code);
        } finally {
            System.setIn(before);
        }
        return out.toString().lines().toList();
    }

    @Test
    void answersEveryLineAndStopsForNone() {
        List<String> answers = run("""
                {"id":1,"quantity":"spring-index","given":{"wireMm":6,"meanCoilMm":50}}
                nonsense

                {"id":2,"quantity":"spring-index","given":{"wireIn":"1/4","meanCoilIn":"2 1/8"}}""");
        assertEquals(4, answers.size());
        assertTrue(answers.get(0).contains("\"value\":8.33"), answers.get(0));
        assertTrue(answers.get(1).contains("BAD_LINE"), answers.get(1));
        assertTrue(answers.get(2).contains("BAD_LINE"), answers.get(2));
        assertTrue(answers.get(3).contains("\"value\":8.5"), answers.get(3));
    }

    @Test
    void listsEveryQuantity() {
        List<String> lines = run("", "--list");
        assertTrue(lines.size() > 60);
        assertTrue(lines.stream().allMatch(line -> line.startsWith("{\"quantity\":\"")));
    }
}
