package beltmark.sheet;

import beltmark.core.sheet.SetupSheet;
import beltmark.db.Database;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CompletableFuture;

/** The verbs of set-up sheets: keep one for the crew, list them, open one. */
public final class Sheets {

    private static final int MOST_LISTED = 200;

    private final Database database;
    private final RecordBook book;
    private final Clock clock;
    private final SheetStore store = new SheetStore();

    public Sheets(Database database, RecordBook book, Clock clock) {
        this.database = database;
        this.book = book;
        this.clock = clock;
    }

    /**
     * A kept sheet as it is opened.
     *
     * @param line what the list says of it
     * @param record what was kept
     */
    record Opened(SavedSheet line, SheetRecord record) {}

    /** Keeps a sheet for the person's crew, and tells the number of its record, also when it was kept before. */
    CompletableFuture<Long> save(Visitor person, SheetForm form, SetupSheet sheet, OperationId operation) {
        SheetRecord body = SheetRecord.of(person.crewId(), form, sheet);
        return database.write(handle -> {
            Instant now = clock.instant();
            long id = person.personId();
            Recorded recorded = book.append(handle, new Entry("sheet.saved", operation.value(), id, id, now, body));
            if (recorded.isNew()) {
                SavedSheet line = new SavedSheet(
                        recorded.sequence(),
                        body.card(),
                        form.text(SheetField.TIP),
                        form.text(SheetField.PLACE),
                        person.name(),
                        now);
                store.add(handle, person.crewId(), id, line);
            }
            return recorded.sequence();
        });
    }

    /** {@return the sheets of the person's crew, the newest first} */
    List<SavedSheet> list(Visitor person) {
        return database.read(handle -> store.list(handle, person.crewId(), MOST_LISTED));
    }

    /** {@return a sheet of the person's crew; any other is not there} */
    Opened get(Visitor person, long record) {
        return database.read(handle -> {
            SavedSheet line = store.find(handle, person.crewId(), record)
                    .orElseThrow(() -> new NotFound("no sheet " + record + " of that crew"));
            return new Opened(line, book.find(handle, record).orElseThrow().bodyAs(SheetRecord.class));
        });
    }
}
