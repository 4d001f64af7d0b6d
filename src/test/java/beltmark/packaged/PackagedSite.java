package beltmark.packaged;

import beltmark.Browser;
import beltmark.Browser.Reply;
import beltmark.SampleSite;
import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The server of the packaged jar with the demo people, on a free port, in a process that can be killed. */
final class PackagedSite implements AutoCloseable {

    private static final Pattern ADDRESS = Pattern.compile("http://[0-9.]+:([0-9]+)/");

    private final Process process;
    private final int port;

    private PackagedSite(Process process, int port) {
        this.process = process;
        this.port = port;
    }

    /** {@return a running server that keeps its data in the folder {@code data} of this one} */
    static PackagedSite start(Path folder) {
        File log = folder.resolve("server.log").toFile();
        try {
            Process process = Jar.process(folder, "serve", "--demo", "--port", "0", "--data", "data")
                    .redirectError(ProcessBuilder.Redirect.appendTo(log))
                    .start();
            BufferedReader out =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
            // the sign-ins that follow are a screenful, which a pipe holds unread
            String first = out.readLine();
            Matcher address = ADDRESS.matcher(first == null ? "" : first);
            if (!address.find()) {
                process.destroyForcibly();
                throw new IllegalStateException("no address but " + first + "; see " + log);
            }
            return new PackagedSite(process, Integer.parseInt(address.group(1)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@return where it answers} */
    String address() {
        return "http://127.0.0.1:" + port;
    }

    /** {@return the port it listens on} */
    int port() {
        return port;
    }

    /** {@return a browser without scripts in which somebody has signed in} */
    Browser signIn(String crew, String name) {
        Browser browser = new Browser(address());
        Reply crews = browser.get("/sign-in");
        Reply names = browser.get(link(crews, crew));
        browser.get(link(names, name)).send("pin", SampleSite.pin());
        return browser;
    }

    private static String link(Reply page, String shown) {
        return page.page().select("a:contains(" + shown + ")").attr("href");
    }

    /** Ends the process at once, as a power cut does: nothing is closed or written any more. */
    void kill() {
        try {
            process.destroyForcibly().waitFor();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    @Override
    public void close() {
        kill();
    }
}
