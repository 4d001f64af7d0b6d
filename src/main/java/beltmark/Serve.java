package beltmark;

import beltmark.core.units.Graduation;
import beltmark.people.DemoPeople;
import beltmark.people.first.SetupCode;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import java.io.PrintWriter;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** The command that runs the server until it is stopped. */
@Command(name = "serve", mixinStandardHelpOptions = true)
final class Serve implements Callable<Integer> {

    private static final int REFUSED = 2;
    private static final int MOST_PORT = 65535;

    @Spec
    @SuppressWarnings("NullAway.Init") // set by picocli
    private CommandSpec spec;

    @Option(names = "--port", defaultValue = "8080")
    private int port;

    @Option(names = "--host", defaultValue = "127.0.0.1")
    private String host = "127.0.0.1";

    @Option(names = "--data", defaultValue = "data")
    private Path data = Path.of("data");

    @Option(names = "--demo")
    private boolean demo;

    @Option(names = "--tls")
    private boolean tls;

    @Option(names = "--insecure-lan")
    private boolean insecureLan;

    @Override
    public Integer call() throws InterruptedException {
        Clock clock = Clock.system(ZoneId.systemDefault());
        Words words = Texts.load(clock.getZone()).words(Language.EN, Graduation.SIXTEENTH_INCH);
        try {
            requireListenable();
            App app = App.start(
                    new Config(host, port, data, demo ? Config.Demo.PAST_YEAR : Config.Demo.NONE, tls), clock);
            Runtime.getRuntime().addShutdownHook(new Thread(app::close, "stop"));
            tellWhere(app, words);
        } catch (CannotListen refused) {
            spec.commandLine().getErr().println(words.say(refused.key(), Map.of("host", host, "port", "" + port)));
            return REFUSED;
        }
        new CountDownLatch(1).await();
        return 0;
    }

    private void requireListenable() throws CannotListen {
        if (port < 0 || port > MOST_PORT) {
            throw new CannotListen("serve.no-port");
        }
        try {
            if (!tls && !insecureLan && !InetAddress.getByName(host).isLoopbackAddress()) {
                throw new CannotListen("serve.open-network");
            }
        } catch (UnknownHostException e) {
            throw new CannotListen("serve.no-host");
        }
    }

    private void tellWhere(App app, Words words) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(words.say("serve.address", Map.of("address", "http://" + shownHost() + ":" + app.port() + "/")));
        out.println(app.isDemo() ? demoSignIns(words) : ready(app, words));
        out.flush();
    }

    private String ready(App app, Words words) {
        return app.findSetupCode()
                .map(code -> words.say(
                        "serve.setup",
                        Map.of(
                                "address",
                                "http://" + shownHost() + ":" + app.port() + "/setup",
                                "code",
                                code.printed(),
                                "minutes",
                                SetupCode.minutes())))
                .orElseGet(() -> words.say("serve.ready"));
    }

    private String shownHost() {
        return host.equals("0.0.0.0") || host.equals("::") ? "localhost" : host;
    }

    private static String demoSignIns(Words words) {
        DemoPeople people = DemoPeople.read();
        String names = people.crews().stream()
                .map(crew -> crew.people().stream()
                        .map(person -> "    " + person.name() + " (" + String.join(", ", person.roles()) + ")")
                        .collect(Collectors.joining("\n", "  " + crew.name() + "\n", "")))
                .collect(Collectors.joining("\n"));
        return words.say("serve.demo", Map.of("pin", people.pin())) + "\n" + names;
    }
}
