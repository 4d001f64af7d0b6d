package beltmark.people;

import beltmark.db.Database;
import beltmark.web.RandomToken;
import beltmark.web.Sessions;
import beltmark.web.Visitor;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/**
 * Who is signed in. A browser holds a random token, the database only its hash, so that a copy of the database opens no
 * session.
 */
public final class PersonSessions implements Sessions {

    /** On tablets that a crew shares. */
    private static final Duration LONGEST_IDLE = Duration.ofMinutes(15);

    /** One long shift. */
    private static final Duration LONGEST = Duration.ofHours(12);

    /** How seldom the use of a session is written down; one that is idle ends that much earlier. */
    private static final Duration BETWEEN_NOTES = Duration.ofMinutes(1);

    private static final int TOKEN_BYTES = 32;
    private static final int TOKEN_LETTERS = 43;

    private final Database database;
    private final Clock clock;
    private final SessionStore store = new SessionStore();

    public PersonSessions(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    @Override
    public Optional<Visitor> find(String token) {
        if (token.length() != TOKEN_LETTERS) {
            return Optional.empty();
        }
        byte[] hash = hash(token);
        Instant now = clock.instant();
        Optional<SessionStore.Found> found =
                database.read(handle -> store.find(handle, hash, now.minus(LONGEST_IDLE), now.minus(LONGEST)));
        found.filter(session -> !session.seenAt().plus(BETWEEN_NOTES).isAfter(now))
                .ifPresent(session -> note(hash, now));
        return found.map(session -> session.person().toVisitor());
    }

    private void note(byte[] hash, Instant now) {
        // nobody waits for it: a note that is lost only ends the session earlier
        var unused = database.write(handle -> {
            store.see(handle, hash, now);
            return hash;
        });
    }

    /** {@return the token of a new session, within a change} */
    public String start(Handle handle, long personId) {
        Instant now = clock.instant();
        String token = RandomToken.ofBytes(TOKEN_BYTES);
        store.clearOld(handle, now.minus(LONGEST_IDLE), now.minus(LONGEST));
        store.add(handle, hash(token), personId, now);
        return token;
    }

    void end(Handle handle, String token) {
        store.end(handle, hash(token));
    }

    /** Ends all sessions of a person, within a change. */
    public void endOfPerson(Handle handle, long personId) {
        store.endOfPerson(handle, personId);
    }

    private static byte[] hash(String token) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.US_ASCII));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
