package beltmark.web;

import java.util.LinkedHashMap;
import java.util.Map;

/** The headers of every response, also of those that the HTTP layer makes before any handler of ours runs. */
final class SecurityHeaders {

    private static final Map<String, String> ALWAYS = always();

    private final Map<String, String> headers;

    /** @param tls whether browsers reach the server through TLS, and must from then on */
    SecurityHeaders(boolean tls) {
        Map<String, String> all = new LinkedHashMap<>(ALWAYS);
        if (tls) {
            all.put("Strict-Transport-Security", "max-age=63072000; includeSubDomains");
        }
        headers = Map.copyOf(all);
    }

    Map<String, String> headers() {
        return headers;
    }

    private static Map<String, String> always() {
        Map<String, String> headers = new LinkedHashMap<>();
        headers.put(
                "Content-Security-Policy",
                "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; font-src 'self'; "
                        + "connect-src 'self'; manifest-src 'self'; form-action 'self'; base-uri 'none'; "
                        + "frame-ancestors 'none'");
        headers.put("X-Content-Type-Options", "nosniff");
        headers.put("X-Frame-Options", "DENY");
        headers.put("Referrer-Policy", "no-referrer");
        headers.put("Cross-Origin-Opener-Policy", "same-origin");
        headers.put("Cross-Origin-Resource-Policy", "same-origin");
        headers.put("Permissions-Policy", "geolocation=(), camera=(), microphone=()");
        headers.put("Cache-Control", "no-store");
        return headers;
    }
}
