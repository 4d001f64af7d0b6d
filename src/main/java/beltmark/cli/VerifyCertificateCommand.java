package beltmark.cli;

import beltmark.certificate.Payload;
import beltmark.certificate.Token;
import beltmark.certificate.VerifyingKey;
import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Checks the code of a certificate with a published key, without the site and without any network. */
@Command(name = "verify-certificate", mixinStandardHelpOptions = true)
public final class VerifyCertificateCommand implements Callable<Integer> {

    private static final int AS_SIGNED = 0;
    private static final int CHANGED = 1;
    private static final int CANNOT_TELL = 2;

    @Parameters(index = "0", paramLabel = "CODE", descriptionKey = "code")
    private String code = "";

    @Option(names = "--key", required = true, paramLabel = "FILE")
    private Path key = Path.of("");

    @Spec
    private CommandSpec command = CommandSpec.create();

    private final Words words = Texts.load(ZoneOffset.UTC).words(Language.EN, Graduation.MILLIMETRE);

    @Override
    public Integer call() {
        VerifyingKey verifyingKey;
        try {
            verifyingKey = VerifyingKey.ofPem(Files.readString(key));
        } catch (IOException | IllegalArgumentException e) {
            print("certificate.command.no-key", Map.of("file", key.toString()));
            return CANNOT_TELL;
        }
        Optional<Payload> payload = Token.open(Token.strip(code), verifyingKey);
        if (payload.isEmpty()) {
            print("certificate.command.not-signed", Map.of("key", verifyingKey.id()));
            return CHANGED;
        }
        print(payload.get());
        return AS_SIGNED;
    }

    private void print(Payload payload) {
        print("certificate.command.as-signed", Map.of("key", payload.keyId()));
        print(
                "certificate.command.says",
                Map.of(
                        "person", payload.person(),
                        "qualification", payload.qualification(),
                        "from", payload.from().toString(),
                        "to", payload.to().toString(),
                        "issued", payload.issuedAt().toString(),
                        "serial", payload.serial()));
        print("certificate.command.only-site", Map.of());
    }

    private void print(String text, Map<String, ?> values) {
        command.commandLine().getOut().println(words.say(text, values));
    }
}
