package beltmark.web;

import io.javalin.http.Context;
import io.javalin.router.JavalinDefaultRoutingApi;

/** Serves the static files. */
final class AssetRoutes {

    private final Assets assets;

    AssetRoutes(Assets assets) {
        this.assets = assets;
    }

    void register(JavalinDefaultRoutingApi routes) {
        routes.get("/static/{name}", this::send, Role.ANYONE);
    }

    private void send(Context ctx) {
        Assets.Asset asset = assets.find(ctx.pathParam("name")).orElseThrow(() -> new NotFound("static file"));
        ctx.header("Cache-Control", "public, max-age=31536000, immutable")
                .contentType(asset.type())
                .result(asset.bytes());
    }
}
