package beltmark.people;

import beltmark.db.Database;
import beltmark.people.PinStore.StoredPin;
import beltmark.web.TooBusy;
import java.util.Optional;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Compares PINs. A try is taken and on the disk before the PIN is compared, so neither many guesses at once nor a stop of
 * the server buys an eleventh; after ten the PIN is locked until somebody else resets it. A wrong, a locked and an unknown
 * one take the same work and get the same answer. What is not six digits is no try: it is nobody's PIN.
 */
public final class Pins implements AutoCloseable {

    /** Each comparison fills 19 MiB and one core for some 60 ms. */
    private static final int AT_ONCE = 2;

    /** As many as wait no longer than about a second. */
    private static final int LONGEST_QUEUE = 32;

    private static final Logger SECURITY = LoggerFactory.getLogger("security");

    private final Database database;
    private final PinHash hasher;
    private final PinStore store = new PinStore();
    private final String hashOfNobody;
    private final ThreadPoolExecutor hashing =
            new ThreadPoolExecutor(AT_ONCE, AT_ONCE, 0, TimeUnit.SECONDS, new ArrayBlockingQueue<>(LONGEST_QUEUE));

    /**
     * @param database where PINs are kept
     * @param pepper the key without which a kept PIN cannot be tried
     */
    public Pins(Database database, byte[] pepper) {
        this.database = database;
        this.hasher = new PinHash(pepper);
        this.hashOfNobody = hasher.hash("");
    }

    /** What a typed PIN is. */
    enum Answer {
        /** Not six digits; no try was taken. */
        NOT_SIX_DIGITS,
        /** Wrong, locked, or of nobody. */
        WRONG,
        /** The person's own. */
        RIGHT,
        /** Right, but given out by somebody else: a new one must be chosen first. */
        MUST_CHANGE;

        /** {@return the key of the sentence on why it was not taken, null when it was} */
        @Nullable
        String refusal() {
            return switch (this) {
                case NOT_SIX_DIGITS -> "people.pin.six-digits";
                case WRONG -> "people.pin.refused";
                case RIGHT, MUST_CHANGE -> null;
            };
        }
    }

    /**
     * What came of comparing a PIN.
     *
     * @param answer what it is
     * @param hash the kept PIN that it is the same as, empty when it is none; whoever acts on the answer looks again
     *     whether that one is still kept
     */
    record Compared(Answer answer, String hash) {

        private static Compared refused(Answer answer) {
            return new Compared(answer, "");
        }
    }

    /** {@return whether a typed PIN has six digits; nothing else is compared} */
    public static boolean isSixDigits(String pin) {
        return PinRules.isSixDigits(pin);
    }

    /**
     * Asks a signed-in person to show again that it is them, as when signing.
     *
     * @param personId the person who is signed in
     * @param pin what was typed
     * @return true when it is the person's PIN; wrong ones count as at sign-in
     */
    public CompletableFuture<Boolean> confirmPin(long personId, String pin) {
        return check(personId, pin).thenApply(compared -> compared.answer() == Answer.RIGHT);
    }

    CompletableFuture<Compared> check(long personId, String pin) {
        return isSixDigits(pin)
                ? whenFree(() -> checkNow(personId, pin))
                : CompletableFuture.completedFuture(Compared.refused(Answer.NOT_SIX_DIGITS));
    }

    /** {@return a PIN as it is kept} */
    CompletableFuture<StoredPin> hash(String pin, boolean mustChange) {
        return whenFree(() -> new StoredPin(hasher.hash(pin), mustChange));
    }

    private <T> CompletableFuture<T> whenFree(Supplier<T> work) {
        try {
            return CompletableFuture.supplyAsync(work, hashing);
        } catch (RejectedExecutionException e) {
            throw new TooBusy("PINs are being compared already", e);
        }
    }

    private Compared checkNow(long personId, String pin) {
        Optional<StoredPin> stored =
                database.write(handle -> store.takeTry(handle, personId)).join();
        boolean same = hasher.matches(pin, stored.map(StoredPin::hash).orElse(hashOfNobody));
        if (!same || stored.isEmpty()) {
            SECURITY.warn("{} person={}", stored.isEmpty() ? "authn_login_lock" : "authn_login_fail", personId);
            return Compared.refused(Answer.WRONG);
        }
        database.write(handle -> {
                    store.giveTriesBack(handle, personId, stored.get());
                    return personId;
                })
                .join();
        return new Compared(
                stored.get().mustChange() ? Answer.MUST_CHANGE : Answer.RIGHT,
                stored.get().hash());
    }

    @Override
    public void close() {
        hashing.shutdown();
    }
}
