package beltmark.people;

import beltmark.core.units.Graduation;
import beltmark.db.Database;
import beltmark.people.PinStore.StoredPin;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.texts.Language;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.Visitor;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Who is in which crew, whose PIN is reset by whom, and each person's own settings. */
public final class People {

    private static final Logger SECURITY = LoggerFactory.getLogger("security");

    private final Database database;
    private final RecordBook book;
    private final Clock clock;
    private final Pins pins;
    private final PersonSessions sessions;
    private final PersonStore store = new PersonStore();
    private final PinStore pinStore = new PinStore();

    /**
     * @param database where people are kept
     * @param book where resets are recorded
     * @param clock the time
     * @param pins how PINs are hashed
     * @param sessions who is signed in
     */
    public People(Database database, RecordBook book, Clock clock, Pins pins, PersonSessions sessions) {
        this.database = database;
        this.book = book;
        this.clock = clock;
        this.pins = pins;
        this.sessions = sessions;
    }

    /**
     * A PIN given out.
     *
     * @param person whose it is
     * @param pin six digits, empty when the same form had been sent before
     */
    record Reset(Person person, String pin) {}

    /** What the record book keeps of a reset; the PIN is not among it. */
    record PinReset(Role as) {}

    /** {@return whether the site holds invented people} */
    public boolean isDemo() {
        return database.read(store::hasDemo);
    }

    /** {@return the person of a name, as who that person is when signed in; throws {@link NotFound} for nobody} */
    public Visitor getVisitor(String name) {
        return database.read(store::listPeople).stream()
                .filter(person -> person.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new NotFound("nobody is called " + name))
                .toVisitor();
    }

    List<Crew> listCrews() {
        return database.read(store::listCrews);
    }

    /** {@return the people a person looks after: the own crew of a supervisor, everybody for an admin} */
    List<Person> listFor(Visitor visitor) {
        return database.read(handle ->
                visitor.has(Role.ADMIN) ? store.listPeople(handle) : store.listCrew(handle, visitor.crewId()));
    }

    /**
     * {@return whether a person may reset another's PIN: nobody their own, and a supervisor only a new hire's, or the supervisor
     * could sign as somebody who signs off}
     */
    static boolean mayReset(Visitor visitor, Person person) {
        boolean leads = visitor.has(Role.SUPERVISOR)
                && person.crewId() == visitor.crewId()
                && person.roles().equals(Set.of(Role.NEW_HIRE));
        return person.id() != visitor.personId() && (visitor.has(Role.ADMIN) || leads);
    }

    /** Gives a person a random PIN for the next sign-in, ends their sessions, and records who did it. */
    CompletableFuture<Reset> resetPin(Visitor visitor, long personId, OperationId operation) {
        Person person = database.read(handle -> store.getPerson(handle, personId));
        if (!mayReset(visitor, person)) {
            throw new NotFound("person " + personId + " for " + visitor.personId());
        }
        String pin = PinRules.random();
        return pins.hash(pin, true)
                .thenCompose(
                        stored -> database.write(handle -> storeReset(handle, visitor, personId, operation, stored)))
                .thenApply(isNew -> new Reset(person, isNew ? pin : ""));
    }

    private boolean storeReset(Handle handle, Visitor visitor, long personId, OperationId operation, StoredPin pin) {
        PinReset body = new PinReset(visitor.has(Role.ADMIN) ? Role.ADMIN : Role.SUPERVISOR);
        Entry entry =
                new Entry("people.pin-reset", operation.value(), personId, visitor.personId(), clock.instant(), body);
        if (!book.append(handle, entry).isNew()) {
            return false;
        }
        pinStore.set(handle, personId, pin);
        sessions.endOfPerson(handle, personId);
        SECURITY.info("user_updated pin reset person={} by={}", personId, visitor.personId());
        return true;
    }

    /** Changes how pages are shown to a person. */
    CompletableFuture<Long> changeSettings(long personId, Language language, Graduation graduation) {
        return database.write(handle -> {
            store.changeSettings(handle, personId, language, graduation);
            return personId;
        });
    }
}
