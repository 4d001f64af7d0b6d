package beltmark.people;

import beltmark.db.Database;
import beltmark.people.PinStore.StoredPin;
import beltmark.people.Pins.Compared;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Signing in and out, and choosing a PIN. */
public final class SignIn {

    private static final Logger SECURITY = LoggerFactory.getLogger("security");

    private final Database database;
    private final Pins pins;
    private final PersonSessions sessions;
    private final PersonStore people = new PersonStore();
    private final PinStore pinStore = new PinStore();

    public SignIn(Database database, Pins pins, PersonSessions sessions) {
        this.database = database;
        this.pins = pins;
        this.sessions = sessions;
    }

    /**
     * How an attempt ended.
     *
     * @param answer what the PIN was
     * @param token the token of the new session, empty unless the answer is {@link Pins.Answer#RIGHT}
     */
    record Attempt(Pins.Answer answer, String token) {}

    List<Crew> listCrews() {
        return database.read(people::listCrews);
    }

    Crew getCrew(long crewId) {
        return database.read(handle -> people.getCrew(handle, crewId));
    }

    List<Person> listCrew(long crewId) {
        return database.read(handle -> people.listCrew(handle, crewId));
    }

    /** {@return a person of a crew; somebody of another crew is not found} */
    Optional<Person> findPerson(long crewId, long personId) {
        return database.read(handle -> people.findPerson(handle, personId)).filter(person -> person.crewId() == crewId);
    }

    /**
     * Signs in with a PIN; one that somebody else gave out signs nobody in.
     *
     * @param personId who
     * @param pin what was typed
     * @param former the token that the browser holds of whoever used it before, whose session ends; empty for none
     */
    CompletableFuture<Attempt> signIn(long personId, String pin, String former) {
        return pins.check(personId, pin)
                .thenCompose(compared -> compared.answer() == Pins.Answer.RIGHT
                        ? database.write(handle -> startSession(handle, personId, compared, former))
                        : CompletableFuture.completedFuture(new Attempt(compared.answer(), "")));
    }

    /** Replaces a PIN that is known by one that may be chosen, ends all sessions of the person and starts one. */
    CompletableFuture<Attempt> changePin(long personId, String pin, String chosen, String former) {
        return pins.check(personId, pin)
                .thenCompose(compared -> compared.answer().refusal() == null
                        ? storePin(personId, compared, chosen, former)
                        : CompletableFuture.completedFuture(new Attempt(compared.answer(), "")));
    }

    private CompletableFuture<Attempt> storePin(long personId, Compared compared, String chosen, String former) {
        return pins.hash(chosen, false)
                .thenCompose(pin -> database.write(handle -> storePin(handle, personId, compared, pin, former)));
    }

    Attempt storePin(Handle handle, long personId, Compared compared, StoredPin chosen, String former) {
        if (!pinStore.isKept(handle, personId, compared.hash())) {
            return new Attempt(Pins.Answer.WRONG, "");
        }
        pinStore.set(handle, personId, chosen);
        sessions.endOfPerson(handle, personId);
        return startSession(handle, personId, new Compared(Pins.Answer.RIGHT, chosen.hash()), former);
    }

    /** A reset ends all sessions; one that came after the PIN was compared leaves none to be started. */
    Attempt startSession(Handle handle, long personId, Compared compared, String former) {
        if (!pinStore.isKept(handle, personId, compared.hash())) {
            return new Attempt(Pins.Answer.WRONG, "");
        }
        sessions.end(handle, former);
        String token = sessions.start(handle, personId);
        SECURITY.info("authn_login_success person={}", personId);
        return new Attempt(Pins.Answer.RIGHT, token);
    }

    /** Ends a session for good; nothing happens when it has ended. */
    CompletableFuture<Void> signOut(String token) {
        return database.write(handle -> {
                    sessions.end(handle, token);
                    return token;
                })
                .thenAccept(ended -> SECURITY.info("session_ended"));
    }
}
