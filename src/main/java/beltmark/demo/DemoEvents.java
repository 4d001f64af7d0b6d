package beltmark.demo;

import beltmark.core.qualification.EventKind;
import beltmark.core.qualification.Scope;
import beltmark.db.Database;
import beltmark.demo.DemoYear.Happened;
import beltmark.people.People;
import beltmark.qualification.FactBook;
import beltmark.qualification.NewFact;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.time.LocalDate;
import org.jdbi.v3.core.Handle;

/** Puts an event on record that somebody's qualifications hang on. */
public final class DemoEvents {

    private static final String KIND = "demo.event";

    private final Database database;
    private final People people;
    private final DemoClock clock;
    private final RecordBook book;
    private final FactBook facts = new FactBook();

    /**
     * @param database where records are
     * @param people who there is
     * @param clock the demo's clock
     */
    public DemoEvents(Database database, People people, DemoClock clock) {
        this.database = database;
        this.people = people;
        this.clock = clock;
        this.book = new RecordBook(clock);
    }

    /** Body of the record. */
    private record Body(String event, String reason) {}

    void play(Happened happened) {
        Visitor who = people.getVisitor(happened.who());
        Visitor by = people.getVisitor(happened.by());
        database.write(handle -> record(handle, happened, who, by)).join();
    }

    private long record(Handle handle, Happened happened, Visitor who, Visitor by) {
        EventKind event = EventKind.find(happened.event())
                .orElseThrow(() -> new IllegalStateException("no event " + happened.event()));
        Entry entry = new Entry(
                KIND,
                OperationId.fresh().value(),
                who.personId(),
                by.personId(),
                clock.instant(),
                new Body(event.id(), happened.reason()));
        long record = book.append(handle, entry).sequence();
        facts.add(handle, record, NewFact.event(event, Scope.person(who.personId()), LocalDate.now(clock)));
        return record;
    }
}
