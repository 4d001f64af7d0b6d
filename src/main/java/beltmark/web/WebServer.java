package beltmark.web;

import io.javalin.Javalin;
import io.javalin.compression.CompressionStrategy;
import io.javalin.config.JavalinConfig;
import io.javalin.config.SizeUnit;
import io.javalin.http.HandlerType;
import io.javalin.router.JavalinDefaultRoutingApi;
import java.util.function.Consumer;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.handler.MinimumDataRateHandler;

/** Sets up the HTTP server: limits, headers, gate and error pages first, then the routes of the features. */
public final class WebServer {

    /** Largest request: a form with every field full, or a list of people. */
    static final long MOST_REQUEST_BYTES = 64L * 1024;

    private static final int MOST_HEADER_BYTES = 8 * 1024;
    /** Slower senders are cut off, so that they cannot hold all threads. */
    private static final long LEAST_BYTES_PER_SECOND = 200;

    private final Views views;
    private final Html html;
    private final Assets assets;
    private final SecurityHeaders headers;

    /**
     * @param views what pages share
     * @param html how they are rendered
     * @param assets static files
     * @param tls whether browsers reach the server through TLS
     */
    public WebServer(Views views, Html html, Assets assets, boolean tls) {
        this.views = views;
        this.html = html;
        this.assets = assets;
        this.headers = new SecurityHeaders(tls);
    }

    /** {@return the server, not yet started, with these routes} */
    public Javalin create(Consumer<JavalinDefaultRoutingApi> features) {
        return Javalin.create(config -> {
            limit(config);
            config.routes.before(ctx -> headers.headers().forEach(ctx::header));
            config.routes.beforeMatched(new Gate(views, html, path -> hasPage(config, path))::check);
            new ErrorPages(views, html).register(config.routes);
            new AssetRoutes(assets).register(config.routes);
            new ReadingRoutes(views).register(config.routes);
            features.accept(config.routes);
        });
    }

    private static boolean hasPage(JavalinConfig config, String path) {
        return config.unsafe.internalRouter.findFirstHttpHandlerEntry(HandlerType.GET, path) != null;
    }

    private void limit(JavalinConfig config) {
        config.startup.showJavalinBanner = false;
        config.startup.showOldJavalinVersionWarning = false;
        config.http.prefer405over404 = true;
        config.http.maxRequestSize = MOST_REQUEST_BYTES;
        config.jetty.multipartConfig.maxTotalRequestSize(MOST_REQUEST_BYTES, SizeUnit.BYTES);
        config.jetty.multipartConfig.maxFileSize(MOST_REQUEST_BYTES, SizeUnit.BYTES);
        // nothing that is sent is written to disk before it is looked at
        config.jetty.multipartConfig.maxInMemoryFileSize((int) MOST_REQUEST_BYTES, SizeUnit.BYTES);
        // a page holds a secret token next to text that others may choose
        config.http.compressionStrategy = CompressionStrategy.NONE;
        config.jetty.modifyHttpConfiguration(WebServer::limit);
        config.jetty.modifyServer(server -> {
            server.setErrorHandler(new LayerErrors(headers));
            server.setHandler(new MinimumDataRateHandler(LEAST_BYTES_PER_SECOND, 0));
        });
    }

    private static void limit(HttpConfiguration http) {
        http.setSendServerVersion(false);
        http.setSendXPoweredBy(false);
        http.setRequestHeaderSize(MOST_HEADER_BYTES);
    }
}
