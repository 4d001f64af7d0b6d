package beltmark.web;

import beltmark.core.units.LengthReader;
import beltmark.texts.Words;
import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;

/** Tells how a typed length is read, while it is typed; the same reader as for the sent form. */
final class ReadingRoutes {

    private final Views views;

    ReadingRoutes(Views views) {
        this.views = views;
    }

    void register(JavalinDefaultRoutingApi routes) {
        routes.get("/reading", this::read, Role.SIGNED_IN);
    }

    private void read(Context ctx) {
        Words words = views.of(ctx).words();
        String typed = ctx.queryParam("typed");
        ctx.contentType("text/plain; charset=utf-8")
                .result(words.reading(
                        LengthReader.read(typed, words.graduation().unit())));
    }
}
