package beltmark.cli;

import beltmark.core.units.Graduation;
import beltmark.db.Database;
import beltmark.db.Integrity;
import beltmark.db.Schema;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Verification;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Checks every record of a data folder, with or without a server running on it. */
@Command(name = "verify", mixinStandardHelpOptions = true)
public final class VerifyCommand implements Callable<Integer> {

    private static final int UNCHANGED = 0;
    private static final int CHANGED = 1;
    private static final int CANNOT_TELL = 2;

    @Option(names = "--data", required = true, paramLabel = "DIR")
    private Path data = Path.of("");

    @Option(names = "--head", paramLabel = "NUMBER:HASH")
    private @Nullable String earlierHead;

    @Spec
    private CommandSpec command = CommandSpec.create();

    private final RecordBook book = new RecordBook(Clock.systemUTC());
    private final Words words = Texts.load(ZoneOffset.UTC).words(Language.EN, Graduation.MILLIMETRE);

    @Override
    public Integer call() {
        try {
            return Database.inspect(data, this::check);
        } catch (RuntimeException e) {
            boolean damaged = Integrity.isDamage(e);
            print(damaged ? "recordbook.verify.damage" : "recordbook.verify.cannot-tell", Map.of("fault", reason(e)));
            return damaged ? CHANGED : CANNOT_TELL;
        }
    }

    private static String reason(RuntimeException fault) {
        String message = fault.getMessage();
        return message == null ? fault.toString() : message;
    }

    private int check(Handle handle) {
        Verification verification = book.verify(handle);
        List<String> damage = Integrity.faults(handle);
        boolean asNoted = earlierHead == null || book.extendsHead(handle, earlierHead);
        printRecords(verification);
        verification.schemaDifferences().forEach(this::printDifference);
        damage.forEach(fault -> print("recordbook.verify.damage", Map.of("fault", fault)));
        if (!asNoted) {
            print("recordbook.verify.other-head", Map.of());
        }
        return verification.isUnchanged() && damage.isEmpty() && asNoted ? UNCHANGED : CHANGED;
    }

    private void printRecords(Verification verification) {
        Map<String, Long> count = Map.of("count", verification.head().sequence());
        if (verification.fault().isPresent()) {
            Verification.Fault fault = verification.fault().get();
            String reason = words.say("recordbook.verify.reason." + textKey(fault.reason()));
            print("recordbook.verify.changed", Map.of("number", fault.sequence(), "reason", reason));
            print("recordbook.verify.trusted", count);
        } else {
            print("recordbook.verify.unchanged", count);
        }
        print("recordbook.verify.head", Map.of("head", verification.head().toWord()));
        if (verification.head().sequence() > 0) {
            print(
                    "recordbook.verify.head-time",
                    Map.of("time", verification.head().recordedAt().toString()));
        }
    }

    private void printDifference(Schema.Difference difference) {
        print(
                "recordbook.verify.schema." + textKey(difference.change()),
                Map.of("definition", difference.definition()));
    }

    private static String textKey(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private void print(String key, Map<String, ?> values) {
        command.commandLine().getOut().println(words.say(key, values));
    }
}
