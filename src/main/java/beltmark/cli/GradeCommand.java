package beltmark.cli;

import beltmark.content.Content;
import beltmark.core.problem.Problem;
import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Grades answers by the same grader as the page; answers that cannot be graded do not keep later ones from it. */
@Command(name = "grade", mixinStandardHelpOptions = true)
public final class GradeCommand implements Callable<Integer> {

    private static final int GRADED = 0;
    private static final int REFUSED = 2;

    @Parameters(arity = "0..1", paramLabel = "FILE", descriptionKey = "file")
    private @Nullable Path file;

    @Spec
    private CommandSpec command = CommandSpec.create();

    private final Texts texts = Texts.load(ZoneOffset.UTC);
    private final Words words = texts.words(Language.EN, Graduation.SIXTEENTH_INCH);

    @Override
    public Integer call() {
        Documents documents;
        try {
            documents = new Documents(read());
        } catch (IOException e) {
            return refuse("grade.unreadable-file", Map.of("file", String.valueOf(file)));
        }
        return documents.hasNext() ? gradeAll(documents) : refuse("grade.nothing-to-read", Map.of());
    }

    private String read() throws IOException {
        return file == null
                ? new String(System.in.readAllBytes(), StandardCharsets.UTF_8)
                : Files.readString(file, StandardCharsets.UTF_8);
    }

    private int refuse(String key, Map<String, ?> values) {
        command.commandLine().getErr().println(words.say(key, values));
        return REFUSED;
    }

    private int gradeAll(Documents documents) {
        Problems problems = new Problems(Content.read());
        PrintWriter out = command.commandLine().getOut();
        int exit = GRADED;
        for (long number = 1; documents.hasNext(); number++) {
            try {
                out.println(CliJson.write(grade(problems, Answers.read(documents.next()))));
            } catch (GradeRefused refused) {
                out.println(CliJson.write(RefusedJson.of(number, refused, words)));
                exit = REFUSED;
            }
        }
        return exit;
    }

    private GradeJson grade(Problems problems, Answers answers) {
        Problem problem = problems.get(answers.family(), answers.code());
        answers.requireKnown(problem);
        Graduation unit = answers.unit();
        return GradeJson.of(problem, answers.typed(), unit.unit(), texts.words(Language.EN, unit));
    }
}
