package beltmark;

import beltmark.cli.AnalyseCommand;
import beltmark.cli.ComputeCommand;
import beltmark.cli.GradeCommand;
import beltmark.cli.ProblemCommand;
import beltmark.cli.VerifyCertificateCommand;
import beltmark.cli.VerifyCommand;
import beltmark.content.ContentFaults;
import beltmark.db.CannotOpen;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The command line; each command is a class of its own. */
@Command(
        name = "beltmark",
        mixinStandardHelpOptions = true,
        subcommands = {
            Serve.class,
            ComputeCommand.class,
            ProblemCommand.class,
            GradeCommand.class,
            AnalyseCommand.class,
            VerifyCommand.class,
            VerifyCertificateCommand.class
        })
public final class Main {

    private Main() {}

    /** Runs a command and ends with its exit code. */
    public static void main(String[] args) {
        System.exit(commandLine().execute(args));
    }

    /** {@return the command line, ready to run} */
    static CommandLine commandLine() {
        // figures have signs such as ° and Ω, which many a system's own encoding lacks
        PrintWriter out = new PrintWriter(new OutputStreamWriter(System.out, StandardCharsets.UTF_8), true);
        return new CommandLine(new Main())
                .setResourceBundle(new CommandTexts())
                .setOut(out)
                .setExecutionExceptionHandler((fault, command, parsed) -> tell(fault, command));
    }

    /** What the person at the keyboard can put right is said in its sentence; anything else is a fault with its trace. */
    private static int tell(Exception fault, CommandLine command) throws Exception {
        if (fault instanceof CannotOpen || fault instanceof ContentFaults) {
            command.getErr().println(fault.getMessage());
            return command.getCommandSpec().exitCodeOnInvalidInput();
        }
        throw fault;
    }
}
