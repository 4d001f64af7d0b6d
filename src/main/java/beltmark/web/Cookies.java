package beltmark.web;

import io.javalin.http.Context;
import io.javalin.http.Cookie;
import io.javalin.http.SameSite;
import org.jspecify.annotations.Nullable;

/**
 * The three cookies there are: the session of a signed-in person, a random one for visitors who are not, so that their
 * forms have something to be bound to, and the language chosen for the pages before sign-in. Behind TLS all are tied to
 * this host and to TLS by their name.
 */
public final class Cookies {

    private static final int TOKEN_BYTES = 32;
    private static final int UNTIL_BROWSER_CLOSES = -1;
    private static final int YEAR_SECONDS = 365 * 24 * 60 * 60;

    private final boolean tls;

    /** @param tls whether browsers reach the server through TLS */
    public Cookies(boolean tls) {
        this.tls = tls;
    }

    /** {@return the session token that was sent, or null} */
    public @Nullable String session(Context ctx) {
        return ctx.cookie(sessionName());
    }

    /** Gives the browser a new session token; the visitor cookie of before is taken away. */
    public void startSession(Context ctx, String token) {
        ctx.cookie(cookie(sessionName(), token, UNTIL_BROWSER_CLOSES));
        ctx.cookie(cookie(visitorName(), "", 0));
    }

    /**
     * Takes the session token from the browser, and with it what the browser keeps of pages. Not its storage: what a person
     * has sent without network is kept there until the server has it.
     */
    public void endSession(Context ctx) {
        ctx.cookie(cookie(sessionName(), "", 0));
        ctx.header("Clear-Site-Data", "\"cache\", \"cookies\"");
    }

    /** {@return the tag of the language chosen on this browser before sign-in, as it was sent, or null} */
    public @Nullable String language(Context ctx) {
        return ctx.cookie(languageName());
    }

    /** Remembers the language for the pages before sign-in. */
    public void keepLanguage(Context ctx, String tag) {
        ctx.cookie(cookie(languageName(), tag, YEAR_SECONDS));
    }

    /** {@return what the forms of this visitor are bound to; a visitor without any cookie is given one} */
    String binding(Context ctx) {
        String sent = sentBinding(ctx);
        if (!sent.isEmpty()) {
            return sent;
        }
        String fresh = RandomToken.ofBytes(TOKEN_BYTES);
        ctx.cookie(cookie(visitorName(), fresh, UNTIL_BROWSER_CLOSES));
        return fresh;
    }

    /** {@return what the browser sent to which its forms are bound, empty when it sent nothing} */
    String sentBinding(Context ctx) {
        String session = session(ctx);
        String sent = session == null || session.isEmpty() ? ctx.cookie(visitorName()) : session;
        return sent == null ? "" : sent;
    }

    private Cookie cookie(String name, String value, int maxAge) {
        Cookie cookie = new Cookie(name, value, "/", maxAge, tls);
        cookie.setHttpOnly(true);
        cookie.setSameSite(SameSite.LAX);
        return cookie;
    }

    private String sessionName() {
        return tls ? "__Host-s" : "s";
    }

    private String languageName() {
        return tls ? "__Host-l" : "l";
    }

    private String visitorName() {
        return tls ? "__Host-v" : "v";
    }
}
