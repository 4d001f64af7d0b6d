package beltmark.web;

import io.javalin.http.Context;
import io.javalin.http.ForbiddenResponse;
import io.javalin.http.HandlerType;
import io.javalin.http.HttpStatus;
import io.javalin.http.MethodNotAllowedResponse;
import io.javalin.security.RouteRole;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Stands before every route: lets in whom its roles name, and takes forms only from our own pages. */
final class Gate {

    private static final Logger SECURITY = LoggerFactory.getLogger("security");
    private static final Set<HandlerType> READING = Set.of(HandlerType.GET, HandlerType.HEAD, HandlerType.OPTIONS);

    private final Views views;
    private final Html html;
    private final Predicate<String> hasPage;

    /** @param hasPage whether an address can be opened, and not only be sent a form */
    Gate(Views views, Html html, Predicate<String> hasPage) {
        this.views = views;
        this.html = html;
        this.hasPage = hasPage;
    }

    /** Runs after the route is found and before its handler; answers by itself when it does not let pass. */
    void check(Context ctx) {
        Set<RouteRole> roles = ctx.routeRoles();
        Visitor visitor = views.findVisitor(ctx);
        // decided on the method that was routed, which a header may have changed
        boolean changes = !READING.contains(ctx.method());
        if (visitor == null && !roles.contains(Role.ANYONE) && !roles.isEmpty()) {
            askToSignIn(ctx, changes);
            return;
        }
        if (ctx.method().equals(HandlerType.HEAD)) {
            // would be let through without the roles of the page it stands for
            throw new MethodNotAllowedResponse("HEAD", Map.of());
        }
        if (!allows(roles, visitor)) {
            SECURITY.warn("authz_fail person={} {} {}", person(visitor), ctx.method(), ctx.path());
            throw new ForbiddenResponse();
        }
        if (changes) {
            refuseForeignForm(ctx, visitor);
        }
    }

    private static boolean allows(Set<RouteRole> roles, @Nullable Visitor visitor) {
        return roles.contains(Role.ANYONE)
                || (visitor != null
                        && (roles.contains(Role.SIGNED_IN)
                                || visitor.roles().stream().anyMatch(roles::contains)));
    }

    private void askToSignIn(Context ctx, boolean changes) {
        if (changes) {
            answerNotStored(ctx, HttpStatus.UNAUTHORIZED, "ended", Typed.of(Form.of(ctx)));
        } else {
            String query = ctx.queryString();
            String wanted = ctx.path() + (query == null ? "" : "?" + query);
            ctx.redirect(signIn(wanted), HttpStatus.SEE_OTHER);
            ctx.skipRemainingHandlers();
        }
    }

    private void refuseForeignForm(Context ctx, @Nullable Visitor visitor) {
        boolean sameSite = FormOrigin.isOwn(ctx);
        Form form = Form.of(ctx);
        if (sameSite && views.ownForm(ctx, form.text(FormTokens.FIELD))) {
            return;
        }
        SECURITY.warn(
                "malicious_csrf person={} {} {} own site {}", person(visitor), ctx.method(), ctx.path(), sameSite);
        // what a foreign page sent is not shown back
        answerNotStored(ctx, HttpStatus.FORBIDDEN, "stale", sameSite ? Typed.of(form) : List.of());
    }

    private void answerNotStored(Context ctx, HttpStatus status, String kind, List<Typed> typed) {
        String back = hasPage.test(ctx.path()) ? ctx.path() : "/";
        String next = status == HttpStatus.UNAUTHORIZED ? signIn(back) : back;
        html.show(ctx, status.getCode(), new NotStoredPage(views.of(ctx), kind, typed, next));
        ctx.skipRemainingHandlers();
    }

    private static String signIn(String next) {
        return "/sign-in?next=" + URLEncoder.encode(next, StandardCharsets.UTF_8);
    }

    private static String person(@Nullable Visitor visitor) {
        return visitor == null ? "-" : Long.toString(visitor.personId());
    }
}
