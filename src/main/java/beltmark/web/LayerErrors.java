package beltmark.web;

import java.util.Map;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/**
 * Answers what the HTTP layer refuses by itself (400, 414, 431, 505, …): our headers, the number of the status, and not a
 * word of what was sent.
 */
final class LayerErrors extends ErrorHandler {

    private static final String TYPE = "text/plain; charset=utf-8";

    private final Map<String, String> headers;

    LayerErrors(SecurityHeaders headers) {
        this.headers = headers.headers();
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        headers.forEach(response.getHeaders()::put);
        response.getHeaders().put(HttpHeader.CONTENT_TYPE, TYPE);
        Content.Sink.write(response, true, body(response.getStatus()), callback);
        return true;
    }

    private static String body(int status) {
        return status + "\n";
    }
}
