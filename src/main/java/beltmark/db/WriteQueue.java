package beltmark.db;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/** The changes waiting for the writer, in the order they came. */
final class WriteQueue {

    private static final int LONGEST = 4096;
    private static final int LARGEST_BATCH = 64;

    private final ArrayDeque<Change<?>> waiting = new ArrayDeque<>();
    private boolean closing;

    /** Takes a change in, or throws because there is no room or no tomorrow. */
    synchronized void add(Change<?> change) {
        if (closing) {
            throw new NotStored("not stored: the server is stopping", null);
        }
        if (waiting.size() >= LONGEST) {
            throw new NotStored("not stored: " + LONGEST + " changes are waiting already", null);
        }
        waiting.add(change);
        notifyAll();
    }

    /** {@return everything that waits, up to a batch; waits for the first one; empty once closed and finished} */
    synchronized List<Change<?>> takeBatch() throws InterruptedException {
        while (waiting.isEmpty() && !closing) {
            wait();
        }
        List<Change<?>> batch = new ArrayList<>(LARGEST_BATCH);
        while (batch.size() < LARGEST_BATCH && !waiting.isEmpty()) {
            batch.add(waiting.remove());
        }
        return batch;
    }

    /** Takes no more in; what waits is still handed out. */
    synchronized void close() {
        closing = true;
        notifyAll();
    }
}
