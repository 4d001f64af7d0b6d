package beltmark.desk;

import beltmark.core.qualification.EventKind;
import beltmark.core.qualification.Scope;
import beltmark.db.Database;
import beltmark.qualification.FactBook;
import beltmark.qualification.NewFact;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import beltmark.web.NotFound;
import beltmark.web.Option;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;

/** What is done with retraining orders: made, listed, closed. */
public final class Orders {

    private final Database database;
    private final RecordBook book;
    private final Clock clock;
    private final FactBook facts = new FactBook();
    private final OrderStore store = new OrderStore();

    /**
     * @param database where they are kept
     * @param book where they are recorded
     * @param clock the time at the site
     */
    public Orders(Database database, RecordBook book, Clock clock) {
        this.database = database;
        this.book = book;
        this.clock = clock;
    }

    LocalDate today() {
        return LocalDate.now(clock);
    }

    /** {@return the open orders, the one that is due first before the others} */
    List<Order> listOpen() {
        return database.read(store::listOpen);
    }

    List<Option> listPeople() {
        return database.read(store::listPeople);
    }

    List<Trained> listTrained() {
        return database.read(store::listTrained);
    }

    /** {@return an order with what is on record since} */
    Found get(long order) {
        return database.read(handle -> {
            Order found = store.find(handle, order).orElseThrow(() -> new NotFound("order " + order));
            return new Found(
                    found,
                    book.find(handle, order)
                            .orElseThrow()
                            .bodyAs(OrderMade.class)
                            .reason(),
                    store.findPaper(handle, found),
                    store.findDemonstration(handle, found));
        });
    }

    /** Records an order, which holds the person back as the rules of the qualifications say. */
    CompletableFuture<Long> make(long visitor, long person, OrderMade made, String operation) {
        return database.write(handle -> {
            Recorded recorded = append(handle, "desk.retraining-ordered", operation, person, visitor, made);
            if (recorded.isNew()) {
                store.add(handle, recorded.sequence(), person, today(), made);
                NewFact event = NewFact.event(EventKind.RETRAINING_ORDERED, Scope.person(person), today());
                facts.add(handle, recorded.sequence(), event);
            }
            return recorded.sequence();
        });
    }

    /**
     * Closes an order, which releases the person from it. An order that is closed already stays as it is.
     *
     * @return the words for what is missing; none when it is closed
     */
    CompletableFuture<List<String>> close(long visitor, long order, ClosingForm form, String operation) {
        return database.write(handle -> {
            Order found = store.find(handle, order).orElseThrow(() -> new NotFound("order " + order));
            Optional<Proof> paper = store.findPaper(handle, found);
            Optional<Proof> demonstration = store.findDemonstration(handle, found);
            List<String> missing = found.open() ? form.missing(found, paper, demonstration, today()) : List.of();
            if (found.open() && missing.isEmpty()) {
                OrderClosed closed = form.toBody(found, paper.orElseThrow(), demonstration);
                record(handle, visitor, found.personId(), closed, operation);
            }
            return missing;
        });
    }

    private void record(Handle handle, long visitor, long person, OrderClosed closed, String operation) {
        Recorded recorded = append(handle, "desk.retraining-closed", operation, person, visitor, closed);
        if (recorded.isNew()) {
            store.addClosed(handle, recorded.sequence(), closed);
            NewFact release = NewFact.release(Scope.person(person), closed.order(), today());
            facts.add(handle, recorded.sequence(), release);
        }
    }

    private Recorded append(Handle handle, String kind, String operation, long person, long visitor, Object body) {
        return book.append(handle, new Entry(kind, operation, person, visitor, clock.instant(), body));
    }

    /**
     * An order with what is on record since.
     *
     * @param order the order
     * @param reason what happened, in the coordinator's words
     * @param paper the paper passed since, if any
     * @param demonstration the demonstration signed since, if any
     */
    record Found(Order order, String reason, Optional<Proof> paper, Optional<Proof> demonstration) {}
}
