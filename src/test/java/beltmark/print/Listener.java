package beltmark.print;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.util.concurrent.atomic.AtomicInteger;

/** A server on this machine that counts who asks it for anything. */
record Listener(HttpServer server) implements AutoCloseable {

    static Listener start(AtomicInteger asked) throws IOException {
        HttpServer server = HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
        server.createContext("/", exchange -> {
            asked.incrementAndGet();
            exchange.sendResponseHeaders(404, -1);
            exchange.close();
        });
        server.start();
        return new Listener(server);
    }

    String address() {
        return "http://127.0.0.1:" + server.getAddress().getPort() + "/x.png";
    }

    @Override
    public void close() {
        server.stop(0);
    }
}
