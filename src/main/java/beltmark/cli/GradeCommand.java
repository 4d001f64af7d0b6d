package beltmark.cli;

import beltmark.content.Content;
import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MappingIterator;
import java.io.IOException;
import java.io.InputStream;
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
import picocli.CommandLine.TypeConversionException;

/** Grades answers by the same grader as the page. */
@Command(
        name = "grade",
        mixinStandardHelpOptions = true,
        description = {
            "Reads answers as JSON and prints the verdicts as JSON, one for each problem read:",
            "{\"family\":\"mount-marks\",\"code\":\"7K3M1Q\",\"unit\":\"in\",",
            " \"answers\":{\"mount-mark\":{\"left\":\"28 3/4\",\"right\":\"29\"}}}"
        })
public final class GradeCommand implements Callable<Integer> {

    @Parameters(arity = "0..1", description = "the file to read; standard input without one")
    private @Nullable Path file;

    @Spec
    private CommandSpec command = CommandSpec.create();

    /**
     * Answers to one problem.
     *
     * @param family the family's id
     * @param code the problem's code
     * @param unit in (default), in32 or mm: the unit of lengths typed without one
     * @param answers what was typed, by part and blank
     */
    record AnswersJson(
            @Nullable String family,
            @Nullable String code,
            @Nullable String unit,
            @Nullable Map<String, Map<String, String>> answers) {}

    @Override
    public Integer call() throws IOException {
        Problems problems = new Problems(Content.read(), command);
        Texts texts = Texts.load(ZoneOffset.UTC);
        try (InputStream in = file == null ? System.in : Files.newInputStream(file);
                MappingIterator<AnswersJson> all = CliJson.readAll(in, AnswersJson.class)) {
            while (all.hasNextValue()) {
                command.commandLine().getOut().println(CliJson.write(grade(problems, texts, all.nextValue())));
            }
            return 0;
        } catch (TypeConversionException e) {
            throw problems.refuse(String.valueOf(e.getMessage()));
        } catch (JsonProcessingException e) {
            throw problems.refuse("The answers are not JSON of the form that --help shows: " + e.getOriginalMessage());
        }
    }

    private static GradeJson grade(Problems problems, Texts texts, AnswersJson asked) {
        if (asked.family == null || asked.code == null || asked.answers == null) {
            throw problems.refuse("The answers must name \"family\", \"code\" and \"answers\".");
        }
        Graduation unit = asked.unit == null ? Graduation.SIXTEENTH_INCH : UnitOption.find(asked.unit);
        return GradeJson.of(
                problems.get(asked.family, asked.code), asked.answers, unit.unit(), texts.words(Language.EN, unit));
    }
}
