package beltmark.people;

import beltmark.db.Database;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
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

    /** Signs in with a PIN; one that somebody else gave out signs nobody in. */
    CompletableFuture<Attempt> signIn(long personId, String pin) {
        return pins.check(personId, pin)
                .thenCompose(answer -> answer == Pins.Answer.RIGHT
                        ? database.write(handle -> sessions.start(handle, personId))
                                .thenApply(token -> started(personId, token))
                        : CompletableFuture.completedFuture(new Attempt(answer, "")));
    }

    /** Replaces a PIN that is known by one that may be chosen, ends all sessions of the person and starts one. */
    CompletableFuture<Attempt> changePin(long personId, String pin, String chosen) {
        return pins.check(personId, pin)
                .thenCompose(answer -> answer == Pins.Answer.WRONG
                        ? CompletableFuture.completedFuture(new Attempt(answer, ""))
                        : storePin(personId, chosen));
    }

    private CompletableFuture<Attempt> storePin(long personId, String chosen) {
        return pins.hash(chosen, false)
                .thenCompose(pin -> database.write(handle -> {
                    pinStore.set(handle, personId, pin);
                    sessions.endOfPerson(handle, personId);
                    return sessions.start(handle, personId);
                }))
                .thenApply(token -> started(personId, token));
    }

    private static Attempt started(long personId, String token) {
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
