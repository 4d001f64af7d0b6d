package beltmark.cli;

import beltmark.compute.LineComputer;
import beltmark.compute.LineInput;
import beltmark.compute.Listing;
import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Computes what lines of JSON ask for, by the same core as the pages. */
@Command(name = "compute", mixinStandardHelpOptions = true)
public final class ComputeCommand implements Callable<Integer> {

    @Option(names = "--list", descriptionKey = "list")
    private boolean list;

    @Spec
    private CommandSpec command = CommandSpec.create();

    @Override
    public Integer call() throws IOException {
        PrintWriter out = command.commandLine().getOut();
        if (list) {
            Listing.lines().forEach(out::println);
        } else {
            answerAll(new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)), out);
        }
        out.flush();
        return 0;
    }

    private static void answerAll(BufferedReader in, PrintWriter out) throws IOException {
        LineComputer computer = new LineComputer(Texts.load(ZoneOffset.UTC).words(Language.EN, Graduation.MILLIMETRE));
        LineInput lines = new LineInput(in);
        for (long number = 1; lines.next(); number++) {
            @Nullable String line = lines.line();
            out.println(line == null ? computer.tooLong(number) : computer.answer(line, number));
            if (!in.ready()) {
                // whoever writes the next line may be waiting for this answer
                out.flush();
            }
        }
    }
}
