package beltmark.people.intake;

import beltmark.db.Database;
import beltmark.people.Joined;
import beltmark.people.Joining;
import beltmark.people.NewPin;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;

/** Shows what a roster would change, and stores it whole: one change of the database, one record for each person. */
public final class Intake {

    private final Database database;
    private final RecordBook book;
    private final Clock clock;
    private final Joining joining;
    private final IntakeStore store = new IntakeStore();

    /**
     * @param database where people are kept
     * @param book where their joining is recorded
     * @param clock the time
     * @param joining puts them on the site
     */
    public Intake(Database database, RecordBook book, Clock clock, Joining joining) {
        this.database = database;
        this.book = book;
        this.clock = clock;
        this.joining = joining;
    }

    /** {@return the day at the site} */
    LocalDate today() {
        return LocalDate.now(clock);
    }

    /** {@return what would become of these rows; nothing is stored} */
    Preview preview(List<RosterRow> rows) {
        return database.read(handle -> preview(handle, rows));
    }

    private Preview preview(Handle handle, List<RosterRow> rows) {
        return new Comparison(store.listCrews(handle), store.listKnown(handle)).preview(rows);
    }

    /** {@return whether that form was stored before} */
    boolean isStored(OperationId operation) {
        return database.read(handle -> book.isRecorded(handle, numbered(operation, 1)));
    }

    /**
     * Somebody who was put on the site.
     *
     * @param name the name
     * @param crew the name of the crew
     * @param pin the PIN for the first sign-in, told this once
     */
    public record Arrival(String name, String crew, String pin) {}

    /**
     * Stores a roster.
     *
     * @return who was put on the site; nobody, and nothing stored, when meanwhile something changed so that the preview
     *     would say otherwise, or the same form had been stored
     */
    CompletableFuture<List<Arrival>> store(Visitor admin, List<RosterRow> rows, OperationId operation) {
        int wanted = preview(rows).newRows().size();
        return joining.freshPins(wanted)
                .thenCompose(pins -> database.write(handle -> {
                    Preview preview = preview(handle, rows);
                    boolean asShown = preview.isStorable() && preview.newRows().size() == pins.size();
                    return asShown && !book.isRecorded(handle, numbered(operation, 1))
                            ? storeAll(handle, admin, preview.newRows(), pins, operation)
                            : List.of();
                }));
    }

    private List<Arrival> storeAll(
            Handle handle, Visitor admin, List<RosterRow> rows, List<NewPin> pins, OperationId operation) {
        List<Arrival> arrivals = new ArrayList<>();
        for (RosterRow row : rows) {
            NewPin pin = pins.get(arrivals.size());
            long crew = store.findCrew(handle, row.crew()).orElseGet(() -> store.addCrew(handle, row.crew()));
            long person = joining.join(handle, row.newcomer(), crew, row.since(), pin);
            arrivals.add(new Arrival(row.newcomer().name(), row.crew(), pin.pin()));
            Joined body = Joined.of(row.newcomer(), row.crew(), crew, row.since());
            String id = numbered(operation, arrivals.size());
            book.append(handle, new Entry(Joined.KIND, id, person, admin.personId(), happened(row), body));
        }
        return arrivals;
    }

    private Instant happened(RosterRow row) {
        return row.since().equals(today())
                ? clock.instant()
                : row.since().atStartOfDay(clock.getZone()).toInstant();
    }

    private static String numbered(OperationId operation, int row) {
        return operation.value() + "." + row;
    }
}
