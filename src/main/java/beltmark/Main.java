package beltmark;

import beltmark.cli.GradeCommand;
import beltmark.cli.ProblemCommand;
import beltmark.cli.VerifyCommand;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line; each command is a class of its own. */
@Command(
        name = "beltmark",
        mixinStandardHelpOptions = true,
        subcommands = {Serve.class, ProblemCommand.class, GradeCommand.class, VerifyCommand.class})
public final class Main {

    private Main() {}

    /** Runs a command and ends with its exit code. */
    public static void main(String[] args) {
        System.exit(commandLine().execute(args));
    }

    /** {@return the command line, ready to run} */
    static CommandLine commandLine() {
        return new CommandLine(new Main()).setResourceBundle(new CommandTexts());
    }
}
