package beltmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URLEncoder;
import java.net.http.HttpClient;
import java.net.http.HttpHeaders;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.FormElement;

/**
 * What a browser without scripts does: keeps cookies, follows redirects, and sends a form with everything that stands in
 * it. Typical use: {@code browser.get("/practice/bench").send("left", "4 3/4")}.
 */
public final class Browser {

    private static final int MOST_REDIRECTS = 5;

    private final HttpClient client = HttpClient.newHttpClient();
    private final String site;
    private final Map<String, String> cookies = new LinkedHashMap<>();
    private final Map<String, String> headers = new LinkedHashMap<>();

    /** @param site the address of the server, without a path */
    public Browser(String site) {
        this.site = site;
    }

    /** {@return the cookies held, which a test may change} */
    public Map<String, String> cookies() {
        return cookies;
    }

    /** {@return this browser, which sends one more header from now on} */
    public Browser with(String header, String value) {
        headers.put(header, value);
        return this;
    }

    /** {@return the page at a path, after any redirects} */
    public Reply get(String path) {
        return follow(ask("GET", path, List.of()));
    }

    /** {@return the answer to a form, after any redirects; nothing is added to the fields} */
    public Reply post(String path, Map<String, String> fields) {
        return follow(ask("POST", path, List.copyOf(fields.entrySet())));
    }

    /** {@return the answer itself, also when it is a redirect} */
    public Reply ask(String method, String path, List<Map.Entry<String, String>> fields) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(site + path));
        headers.forEach(request::header);
        if (!cookies.isEmpty()) {
            request.header(
                    "Cookie",
                    cookies.entrySet().stream()
                            .map(cookie -> cookie.getKey() + "=" + cookie.getValue())
                            .collect(Collectors.joining("; ")));
        }
        if (method.equals("POST")) {
            request.header("Content-Type", "application/x-www-form-urlencoded");
        }
        request.method(
                method, method.equals("POST") ? BodyPublishers.ofString(encode(fields)) : BodyPublishers.noBody());
        return send(request.build(), path);
    }

    private Reply send(HttpRequest request, String path) {
        try {
            HttpResponse<String> response = client.send(request, BodyHandlers.ofString(StandardCharsets.UTF_8));
            response.headers().allValues("Set-Cookie").forEach(this::keep);
            return new Reply(this, path, response.statusCode(), response.headers(), response.body());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private void keep(String setCookie) {
        String pair = setCookie.split(";", 2)[0];
        String name = pair.substring(0, pair.indexOf('='));
        if (setCookie.contains("Max-Age=0")) {
            cookies.remove(name);
        } else {
            cookies.put(name, pair.substring(name.length() + 1));
        }
    }

    private Reply follow(Reply reply) {
        Reply last = reply;
        for (int i = 0; i < MOST_REDIRECTS && last.isRedirect(); i++) {
            last = ask("GET", last.header("Location").replace(site, ""), List.of());
        }
        return last;
    }

    private static String encode(List<Map.Entry<String, String>> fields) {
        return fields.stream()
                .map(field -> URLEncoder.encode(field.getKey(), StandardCharsets.UTF_8) + "="
                        + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    /**
     * An answer of the server.
     *
     * @param browser who asked
     * @param path what was asked for
     * @param status the HTTP status
     * @param headers the headers
     * @param body the text
     */
    public record Reply(Browser browser, String path, int status, HttpHeaders headers, String body) {

        /** {@return the parsed page} */
        public Document page() {
            return Jsoup.parse(body);
        }

        /** {@return what a reader of the page sees} */
        public String text() {
            return page().text();
        }

        /** {@return a header, empty when missing} */
        public String header(String name) {
            return headers.firstValue(name).orElse("");
        }

        /** {@return whether the answer sends the browser elsewhere} */
        public boolean isRedirect() {
            return status / 100 == 3;
        }

        /** {@return the answer to the form on this page that has these fields, sent with these values: name, value, … } */
        public Reply send(String... namesAndValues) {
            FormElement form = page().select("form").stream()
                    .filter(candidate -> !candidate
                            .select("[name=\"" + namesAndValues[0] + "\"]")
                            .isEmpty())
                    .map(FormElement.class::cast)
                    .findFirst()
                    .orElseThrow(() -> new IllegalStateException("no form with " + namesAndValues[0] + " on " + path));
            return send(form, namesAndValues);
        }

        /** {@return the answer to the form on this page that is sent to an address} */
        public Reply sendTo(String action, String... namesAndValues) {
            Element form = page().selectFirst("form[action=\"" + action + "\"]");
            if (form == null) {
                throw new IllegalStateException("no form to " + action + " on " + path);
            }
            return send((FormElement) form, namesAndValues);
        }

        /** {@return the answer to the first form in the content of this page, sent to an address that it does not name} */
        public Reply sendElsewhere(String path, String... namesAndValues) {
            FormElement form = (FormElement) page().select("main form").get(0);
            form.attr("action", path);
            return send(form, namesAndValues);
        }

        private Reply send(FormElement form, String... namesAndValues) {
            List<Map.Entry<String, String>> fields = new ArrayList<>();
            form.formData().forEach(field -> fields.add(Map.entry(field.key(), field.value())));
            for (int i = 0; i < namesAndValues.length; i += 2) {
                String name = namesAndValues[i];
                fields.removeIf(field -> field.getKey().equals(name));
            }
            for (int i = 0; i < namesAndValues.length; i += 2) {
                fields.add(Map.entry(namesAndValues[i], namesAndValues[i + 1]));
            }
            String action = form.attr("action");
            return browser.follow(browser.ask("POST", action.isEmpty() ? path : action, fields));
        }
    }
}
