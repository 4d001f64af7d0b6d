package beltmark.people.first;

import beltmark.core.units.Graduation;
import beltmark.db.Database;
import beltmark.people.Joined;
import beltmark.people.Joining;
import beltmark.people.NewPin;
import beltmark.people.Newcomer;
import beltmark.people.PersonSessions;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.texts.Language;
import beltmark.web.OperationId;
import beltmark.web.Role;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

/** Puts the first admin on an empty site, once, against the code of this start of the server. */
public final class FirstAdmin {

    private static final Logger SECURITY = LoggerFactory.getLogger("security");

    private final Database database;
    private final RecordBook book;
    private final Clock clock;
    private final Joining joining;
    private final PersonSessions sessions;
    private final SetupCode code;
    private final FirstStore store = new FirstStore();

    /**
     * @param database where people are kept
     * @param book where the joining is recorded
     * @param clock the time
     * @param joining puts people on the site
     * @param sessions who is signed in
     */
    public FirstAdmin(Database database, RecordBook book, Clock clock, Joining joining, PersonSessions sessions) {
        this.database = database;
        this.book = book;
        this.clock = clock;
        this.joining = joining;
        this.sessions = sessions;
        this.code = SetupCode.fresh(clock.instant());
    }

    /** {@return the code to be printed, empty when somebody is on the site} */
    public Optional<SetupCode> findCode() {
        return isOpen() ? Optional.of(code) : Optional.empty();
    }

    /** {@return whether nobody is on the site} */
    boolean isOpen() {
        return !database.read(store::hasPeople);
    }

    /** {@return whether that is the code of this start, and it is still good} */
    boolean isCode(String typed) {
        boolean right = code.matches(typed, clock.instant());
        if (!right) {
            SECURITY.warn("authn_login_fail setup code");
        }
        return right;
    }

    /** {@return the token of the admin's first session; empty when somebody was put on the site meanwhile} */
    CompletableFuture<Optional<String>> begin(FirstForm form, Language language, Graduation graduation) {
        Newcomer admin = new Newcomer(form.name(), Set.of(Role.ADMIN), language, graduation);
        return joining.chosenPin(form.pin())
                .thenCompose(pin -> database.write(handle -> store.hasPeople(handle)
                        ? Optional.empty()
                        : Optional.of(begin(handle, admin, form.crew(), pin))));
    }

    private String begin(Handle handle, Newcomer admin, String crewName, NewPin pin) {
        LocalDate today = LocalDate.now(clock);
        long crew = store.addCrew(handle, crewName);
        long person = joining.join(handle, admin, crew, today, pin);
        Joined body = Joined.of(admin, crewName, crew, today);
        String operation = OperationId.fresh().value();
        book.append(handle, new Entry(Joined.KIND, operation, person, person, clock.instant(), body));
        SECURITY.info("user_created first admin person={}", person);
        return sessions.start(handle, person);
    }
}
