package beltmark.cli;

import beltmark.content.Content;
import beltmark.core.problem.Problem;
import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import java.time.ZoneOffset;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Prints a problem with its right answers and slips, for trainers and for checks. */
@Command(name = "problem", mixinStandardHelpOptions = true)
public final class ProblemCommand implements Callable<Integer> {

    @Option(names = "--family", required = true)
    private String family = "";

    @Option(names = "--code", required = true)
    private String code = "";

    @Option(names = "--unit", converter = UnitOption.class)
    private Graduation unit = Graduation.SIXTEENTH_INCH;

    @Spec
    private CommandSpec command = CommandSpec.create();

    @Override
    public Integer call() {
        Words words = Texts.load(ZoneOffset.UTC).words(Language.EN, unit);
        try {
            Problem problem = new Problems(Content.read()).get(family, code);
            command.commandLine().getOut().println(CliJson.write(ProblemJson.of(problem, words)));
            return 0;
        } catch (GradeRefused refused) {
            throw new ParameterException(command.commandLine(), refused.sentence(words));
        }
    }
}
