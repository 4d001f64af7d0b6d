package beltmark.people.staff;

import beltmark.db.Database;
import beltmark.people.Crew;
import beltmark.people.CrewAt;
import beltmark.people.Joining;
import beltmark.people.NewPin;
import beltmark.people.PersonSessions;
import beltmark.people.staff.StaffRecords.Left;
import beltmark.people.staff.StaffRecords.Moved;
import beltmark.people.staff.StaffRecords.Returned;
import beltmark.people.staff.StaffRecords.RolesChanged;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.web.NotFound;
import beltmark.web.Role;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/**
 * Moves people between crews, changes their roles, lets them leave and come back: one record and one change each. Every
 * verb answers what stood against it, empty when it is done, now or by an earlier sending of the same form.
 */
public final class Staff {

    private static final Logger SECURITY = LoggerFactory.getLogger("security");

    private final Database database;
    private final RecordBook book;
    private final Clock clock;
    private final Joining joining;
    private final PersonSessions sessions;
    private final StaffRules rules;
    private final CrewAt crews = new CrewAt();
    private final StaffStore store = new StaffStore();

    /**
     * @param database where people are kept
     * @param book where changes are recorded
     * @param clock the time
     * @param joining gives PINs to those who come back
     * @param sessions who is signed in
     */
    public Staff(Database database, RecordBook book, Clock clock, Joining joining, PersonSessions sessions) {
        this.database = database;
        this.book = book;
        this.clock = clock;
        this.joining = joining;
        this.sessions = sessions;
        this.rules = new StaffRules(clock);
    }

    /** {@return somebody, here or gone, with all crews there were} */
    StaffMember get(long id) {
        return database.read(handle -> store.get(handle, id).with(crews.list(handle, id)));
    }

    /** {@return who has left} */
    List<StaffMember> listGone() {
        return database.read(store::listGone);
    }

    List<Crew> listCrews() {
        return database.read(store::listCrews);
    }

    /** {@return the day at the site} */
    LocalDate today() {
        return LocalDate.now(clock);
    }

    /** Puts somebody into another crew from a day on. */
    CompletableFuture<Optional<StaffRefusal>> move(StaffChange change, long crewId) {
        return database.write(handle -> {
            Crew to = getCrew(handle, crewId);
            return once(handle, change, () -> rules.findMoveFault(handle, change, to), () -> {
                String from = crews.find(handle, change.person(), change.getDay())
                        .map(Crew::name)
                        .orElseThrow();
                append(handle, change, StaffRecords.MOVED, new Moved(from, to.name(), crewId, change.getDay()));
                crews.move(handle, change.person(), crewId, change.getDay());
            });
        });
    }

    /** Gives somebody other roles from now on; their sessions go on, with the new roles at the next request. */
    CompletableFuture<Optional<StaffRefusal>> changeRoles(StaffChange change, Set<Role> roles) {
        return database.write(handle -> once(handle, change, () -> rules.findRolesFault(handle, change, roles), () -> {
            Set<Role> before = store.get(handle, change.person()).roles();
            append(handle, change, StaffRecords.ROLES, RolesChanged.of(before, roles));
            store.setRoles(handle, change.person(), roles);
        }));
    }

    /** Somebody leaves: no sign-in any more, sessions end at once; all records and earlier days stay as they are. */
    CompletableFuture<Optional<StaffRefusal>> leave(StaffChange change) {
        return database.write(handle -> once(handle, change, () -> rules.findLeavingFault(handle, change), () -> {
            String crew = store.get(handle, change.person()).crew().name();
            append(handle, change, StaffRecords.LEFT, new Left(crew, change.getDay()));
            crews.leave(handle, change.person(), change.getDay());
            store.setHere(handle, change.person(), false);
            sessions.endOfPerson(handle, change.person());
        }));
    }

    /**
     * How coming back ended.
     *
     * @param refusal what stood against it
     * @param pin the PIN for the first sign-in, empty when there is none or it was told before
     */
    record Return(Optional<StaffRefusal> refusal, String pin) {}

    /** Somebody who left comes back into a crew, with a PIN that is told once. */
    CompletableFuture<Return> comeBack(StaffChange change, long crewId) {
        return joining.freshPins(1)
                .thenCompose(pins -> database.write(handle -> comeBack(handle, change, crewId, pins.get(0))));
    }

    private Return comeBack(Handle handle, StaffChange change, long crewId, NewPin pin) {
        boolean before = isDone(handle, change);
        Crew to = getCrew(handle, crewId);
        Optional<StaffRefusal> refusal = once(handle, change, () -> rules.findReturnFault(handle, change, to), () -> {
            append(handle, change, StaffRecords.RETURNED, new Returned(to.name(), crewId, change.getDay()));
            crews.join(handle, change.person(), crewId, change.getDay());
            store.setHere(handle, change.person(), true);
            joining.givePin(handle, change.person(), pin);
        });
        return new Return(refusal, before || refusal.isPresent() ? "" : pin.pin());
    }

    private Optional<StaffRefusal> once(
            Handle handle, StaffChange change, Supplier<Optional<StaffRefusal>> fault, Runnable work) {
        if (isDone(handle, change)) {
            return Optional.empty();
        }
        // two admins may be taking each other's role away
        if (!store.isAdmin(handle, change.admin().personId())) {
            throw new NotFound("person " + change.admin().personId() + " is no admin any more");
        }
        Optional<StaffRefusal> found = fault.get();
        if (found.isEmpty()) {
            work.run();
        }
        return found;
    }

    private boolean isDone(Handle handle, StaffChange change) {
        return book.isRecorded(handle, change.operation().value());
    }

    private void append(Handle handle, StaffChange change, String kind, Object body) {
        Instant happened = change.day()
                .filter(day -> !day.equals(today()))
                .map(day -> day.atStartOfDay(clock.getZone()).toInstant())
                .orElseGet(clock::instant);
        long admin = change.admin().personId();
        book.append(handle, new Entry(kind, change.operation().value(), change.person(), admin, happened, body));
        SECURITY.info("user_updated {} person={} by={}", kind, change.person(), admin);
    }

    private Crew getCrew(Handle handle, long id) {
        return store.findCrew(handle, id).orElseThrow(() -> new NotFound("crew " + id));
    }
}
