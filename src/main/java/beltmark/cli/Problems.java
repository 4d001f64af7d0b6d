package beltmark.cli;

import beltmark.content.Content;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** Finds the problem that a command line names. */
record Problems(Content content, CommandSpec command) {

    Problem get(String family, String code) {
        ProblemFamily known = content.findFamily(family)
                .orElseThrow(() -> refuse("There is no family \"" + family + "\"; known are "
                        + content.families().stream().map(ProblemFamily::id).collect(Collectors.joining(", "))
                        + "."));
        return known.problem(ProblemCode.parse(code)
                .orElseThrow(() -> refuse("\"" + code + "\" is no problem code; a code has 1 to " + ProblemCode.LONGEST
                        + " letters and digits.")));
    }

    ParameterException refuse(String sentence) {
        return new ParameterException(command.commandLine(), sentence);
    }
}
