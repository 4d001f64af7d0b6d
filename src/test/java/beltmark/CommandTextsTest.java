package beltmark;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CommandTextsTest {

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "serve | Runs the server",
                "compute | Reads one JSON object",
                "problem | such as 7K3M1Q.",
                "grade | {\"family\":\"mount-marks\"",
                "grade | The file to read",
                "grade | Exit codes:",
                "verify | 1   Something was changed",
                "verify | A head that an earlier run printed"
            })
    void explainsTheCommands(String command, String told) {
        String help = Objects.requireNonNull(Main.commandLine().getSubcommands().get(command))
                .getUsageMessage();
        assertTrue(help.contains(told), help);
    }
}
