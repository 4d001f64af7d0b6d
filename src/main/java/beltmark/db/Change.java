package beltmark.db;

import java.util.concurrent.CompletableFuture;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jspecify.annotations.Nullable;

/**
 * One change on its way to the disk: what to do, and the promise to whoever handed it in.
 *
 * @param <T> the result of the change
 */
final class Change<T extends @Nullable Object> {

    private final Function<Handle, T> work;
    private final CompletableFuture<T> promise = new CompletableFuture<>();
    private Runnable outcome = () -> {};

    Change(Function<Handle, T> work) {
        this.work = work;
    }

    CompletableFuture<T> promise() {
        return promise;
    }

    /** Does the change and keeps its result back until {@link #keepPromise()}. */
    void runOn(Handle handle) {
        T result = work.apply(handle);
        outcome = () -> promise.complete(result);
    }

    /** Notes that this change alone failed. */
    void failWith(Throwable fault) {
        outcome = () -> promise.completeExceptionally(fault);
    }

    /** Tells whoever is waiting; only after the commit. */
    void keepPromise() {
        outcome.run();
    }

    /** Tells whoever is waiting that nothing was stored. */
    void refuse(NotStored fault) {
        promise.completeExceptionally(fault);
    }
}
