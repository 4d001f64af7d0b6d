package beltmark.cli;

import beltmark.analysis.ResponseFault;
import beltmark.analysis.ResponseReader;
import beltmark.analysis.ResponseTable;
import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Analyses a table of answers, right or wrong, with the statistics of the lockout review. */
@Command(name = "analyse", mixinStandardHelpOptions = true)
public final class AnalyseCommand implements Callable<Integer> {

    private static final int ANALYSED = 0;
    private static final int REFUSED = 2;

    @Parameters(arity = "0..1", paramLabel = "FILE", descriptionKey = "file")
    private @Nullable Path file;

    @Option(names = "--cut", paramLabel = "N", descriptionKey = "cut")
    private @Nullable Integer cut;

    @Spec
    private CommandSpec command = CommandSpec.create();

    private final Words words = Texts.load(ZoneOffset.UTC).words(Language.EN, Graduation.MILLIMETRE);

    @Override
    public Integer call() {
        ResponseTable table;
        try (Reader in = open()) {
            table = ResponseReader.read(in);
        } catch (ResponseFault fault) {
            return refuse("analyse.fault." + fault.kind().id(), fault.values());
        } catch (IOException e) {
            return refuse("analyse.unreadable-file", Map.of("file", String.valueOf(file)));
        }
        int items = table.counts().items();
        if (cut != null && (cut < 0 || cut > items)) {
            return refuse("analyse.cut-out-of-range", Map.of("cut", cut, "items", items));
        }
        command.commandLine().getOut().println(CliJson.write(AnalysisJson.of(table, cut, words)));
        return ANALYSED;
    }

    private Reader open() throws IOException {
        return new InputStreamReader(file == null ? System.in : Files.newInputStream(file), StandardCharsets.UTF_8);
    }

    private int refuse(String key, Map<String, ?> values) {
        command.commandLine().getErr().println(words.say(key, values));
        return REFUSED;
    }
}
