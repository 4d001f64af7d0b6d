package beltmark.packaged;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/** The network between browser and server, which a test cuts and mends; also just after the server has got a form. */
final class Relay implements AutoCloseable {

    private static final int CHUNK = 16_384;

    private final ServerSocket door;
    private final Set<Socket> open = ConcurrentHashMap.newKeySet();
    /** Browsers whose answer gets lost. */
    private final Set<Socket> lost = ConcurrentHashMap.newKeySet();

    private volatile int server;
    private volatile boolean cut;
    private volatile boolean losesNextAnswer;

    private Relay(ServerSocket door, int server) {
        this.door = door;
        this.server = server;
    }

    /** {@return a network to a server on this machine} */
    static Relay to(int server) {
        try {
            Relay relay = new Relay(new ServerSocket(0, 50, InetAddress.getLoopbackAddress()), server);
            run(relay::accept);
            return relay;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** {@return where the browser finds the server through it} */
    String address() {
        return "http://127.0.0.1:" + door.getLocalPort();
    }

    void cut() {
        cut = true;
        open.forEach(Relay::close);
    }

    void mend() {
        cut = false;
    }

    /** The server is another process now. */
    void leadTo(int port) {
        server = port;
    }

    /** The next form reaches the server, and its answer is lost because the network is cut before it arrives. */
    void loseNextAnswer() {
        losesNextAnswer = true;
    }

    private void accept() {
        while (!door.isClosed()) {
            try {
                connect(door.accept());
            } catch (IOException closed) {
                // the next round sees whether the door is
            }
        }
    }

    private void connect(Socket browser) throws IOException {
        if (cut) {
            close(browser);
            return;
        }
        Socket upstream;
        try {
            upstream = new Socket(InetAddress.getLoopbackAddress(), server);
        } catch (IOException nobodyThere) {
            close(browser);
            return;
        }
        open.add(browser);
        open.add(upstream);
        run(() -> carry(browser, upstream, true));
        run(() -> carry(upstream, browser, false));
    }

    private void carry(Socket from, Socket to, boolean asking) {
        byte[] chunk = new byte[CHUNK];
        try (from;
                to) {
            InputStream in = from.getInputStream();
            OutputStream out = to.getOutputStream();
            for (int length = in.read(chunk); length > 0 && !cut; length = in.read(chunk)) {
                boolean form = asking && new String(chunk, 0, length, StandardCharsets.ISO_8859_1).startsWith("POST ");
                if (form && losesNextAnswer) {
                    lost.add(from);
                }
                if (!asking && lost.contains(to)) {
                    losesNextAnswer = false;
                    cut();
                    return;
                }
                out.write(chunk, 0, length);
                out.flush();
            }
        } catch (IOException over) {
            // either side hung up
        }
    }

    private static void run(Runnable work) {
        Thread thread = new Thread(work, "relay");
        thread.setDaemon(true);
        thread.start();
    }

    private static void close(Socket socket) {
        try {
            socket.close();
        } catch (IOException alreadyOver) {
            // that is what is wanted
        }
    }

    @Override
    public void close() {
        cut();
        try {
            door.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
