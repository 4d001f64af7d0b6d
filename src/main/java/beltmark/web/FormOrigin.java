package beltmark.web;

import io.javalin.http.Context;
import java.net.URI;

/** Where a form was sent from, as the browser tells it. */
final class FormOrigin {

    private FormOrigin() {}

    /**
     * {@return whether nothing says that the form came from another site} Browsers that send neither header, and those
     * that send the origin {@code null} because pages of ours ask for no referrer, are left to the form token.
     */
    static boolean isOwn(Context ctx) {
        String site = ctx.header("Sec-Fetch-Site");
        if (site != null) {
            return site.equals("same-origin") || site.equals("none");
        }
        String origin = ctx.header("Origin");
        return origin == null || origin.equals("null") || isHost(origin, ctx.header("Host"));
    }

    private static boolean isHost(String origin, @org.jspecify.annotations.Nullable String host) {
        try {
            return URI.create(origin).getRawAuthority() != null
                    && URI.create(origin).getRawAuthority().equalsIgnoreCase(host);
        } catch (IllegalArgumentException e) {
            return false;
        }
    }
}
