package beltmark.web;

import beltmark.db.NotStored;
import beltmark.recordbook.OperationTaken;
import io.javalin.http.Context;
import io.javalin.http.HttpResponseException;
import io.javalin.router.JavalinDefaultRoutingApi;
import jakarta.servlet.ServletException;
import java.util.Map;
import org.eclipse.jetty.http.HttpException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Turns whatever a handler throws into a page; what is our own fault is logged once, under a number the page shows. */
final class ErrorPages {

    private static final Logger LOG = LoggerFactory.getLogger(ErrorPages.class);
    private static final int REFERENCE_BYTES = 6;

    private static final Map<Integer, String> KINDS = Map.of(
            400, "bad-request",
            403, "not-allowed",
            404, "not-found",
            405, "wrong-method",
            409, "form-used",
            413, "too-large",
            429, "too-many",
            503, "busy");

    private final Views views;
    private final Html html;

    ErrorPages(Views views, Html html) {
        this.views = views;
        this.html = html;
    }

    void register(JavalinDefaultRoutingApi routes) {
        routes.exception(NotFound.class, (e, ctx) -> show(ctx, 404, ""));
        routes.exception(TooBusy.class, (e, ctx) -> show(ctx.header("Retry-After", "2"), 429, ""));
        routes.exception(OperationTaken.class, (e, ctx) -> show(ctx, 409, ""));
        routes.exception(NotStored.class, this::showNotStored);
        routes.exception(HttpResponseException.class, (e, ctx) -> show(ctx, e.getStatus(), ""));
        routes.exception(ServletException.class, this::showUnreadable);
        routes.exception(Exception.class, this::showOwnFault);
    }

    private void showNotStored(NotStored fault, Context ctx) {
        LOG.error("not stored: {} {}", ctx.method(), ctx.path(), fault);
        show(ctx.header("Retry-After", "10"), 503, "");
    }

    /** A form with a file that is too large or broken off is refused below us, and reaches us like this. */
    private void showUnreadable(ServletException fault, Context ctx) {
        if (fault.getCause() instanceof HttpException) {
            show(ctx, ctx.contentLength() > WebServer.MOST_REQUEST_BYTES ? 413 : 400, "");
        } else {
            showOwnFault(fault, ctx);
        }
    }

    private void showOwnFault(Exception fault, Context ctx) {
        String reference = RandomToken.ofBytes(REFERENCE_BYTES);
        LOG.error("reference {} at {} {}", reference, ctx.method(), ctx.path(), fault);
        show(ctx, 500, reference);
    }

    private void show(Context ctx, int status, String reference) {
        String kind = KINDS.getOrDefault(status, status < 500 ? "bad-request" : "own-fault");
        html.show(ctx, status, new ErrorPage(views.of(ctx), status, kind, reference));
    }
}
