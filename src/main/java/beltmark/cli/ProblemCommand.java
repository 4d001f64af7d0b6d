package beltmark.cli;

import beltmark.content.Content;
import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import java.time.ZoneOffset;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Prints a problem with its right answers and slips, for trainers and for checks. */
@Command(
        name = "problem",
        mixinStandardHelpOptions = true,
        description = "Prints a problem as JSON: what is told, what is asked, the right answers, every slip.")
public final class ProblemCommand implements Callable<Integer> {

    @Option(names = "--family", required = true, description = "bench, mount-marks, orientation or spring-length")
    private String family = "";

    @Option(names = "--code", required = true, description = "the problem code, such as 7K3M1Q")
    private String code = "";

    @Option(names = "--unit", converter = UnitOption.class, description = "in (default), in32 or mm")
    private Graduation unit = Graduation.SIXTEENTH_INCH;

    @Spec
    private CommandSpec command = CommandSpec.create();

    @Override
    public Integer call() {
        Problems problems = new Problems(Content.read(), command);
        ProblemJson problem = ProblemJson.of(
                problems.get(family, code), Texts.load(ZoneOffset.UTC).words(Language.EN, unit));
        command.commandLine().getOut().println(CliJson.write(problem));
        return 0;
    }
}
