package beltmark.review;

import beltmark.core.lockout.Quiz;
import beltmark.db.Database;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.StoredEntry;
import beltmark.review.first.FirstTotals;
import beltmark.review.first.Period;
import beltmark.web.NotFound;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** What the coordinator looks up about the lockout quiz; each answer is as of one moment. */
public final class Review {

    private static final int MOST_SITTINGS = 20;
    private static final int MOST_CRITICAL = 50;

    private final Database database;
    private final RecordBook book;
    private final Quiz quiz;
    private final Clock clock;
    private final ReviewStore store = new ReviewStore();
    private final FirstTotals firstTotals = new FirstTotals();

    /**
     * @param database where the records are
     * @param book the record book
     * @param quiz the quiz in the version in force
     * @param clock the time
     */
    public Review(Database database, RecordBook book, Quiz quiz, Clock clock) {
        this.database = database;
        this.book = book;
        this.quiz = quiz;
        this.clock = clock;
    }

    /** {@return the quiz in the version in force} */
    Quiz quiz() {
        return quiz;
    }

    /** {@return the number of a crew, or {@link Scope#ALL_CREWS}; throws {@link NotFound} for any other} */
    long requireCrew(long crew) {
        boolean known = crew == Scope.ALL_CREWS
                || database.read(store::listCrews).stream().anyMatch(one -> one.id() == crew);
        if (!known) {
            throw new NotFound("crew " + crew);
        }
        return crew;
    }

    /** {@return how things are for one crew, or for {@link Scope#ALL_CREWS}} */
    Overview overview(long crew, Period period, int page) {
        Scope scope = new Scope(quiz.id(), crew, period, page);
        Instant now = clock.instant();
        return database.read(handle -> new Overview(
                now,
                scope,
                store.listCrews(handle),
                firstTotals.listMonths(handle, quiz.id()),
                store.countPassed(handle, scope),
                store.listStandings(handle, scope),
                firstTotals.of(handle, quiz.id(), crew, period),
                store.listCritical(handle, scope, MOST_CRITICAL)));
    }

    /** {@return every finished sitting of one crew or of all, in the order they were finished} */
    List<FinishedSitting> listFinished(long crew) {
        return database.read(handle -> store.listFinished(handle, Scope.of(quiz.id(), crew)));
    }

    /** {@return a finished sitting with its answers and the other sittings of that person} */
    Optional<SittingRecords> findSitting(long sitting) {
        return database.read(handle -> store.findFinished(handle, quiz.id(), sitting)
                .map(finished -> new SittingRecords(
                        finished,
                        answers(handle, sitting),
                        store.listOfPerson(handle, quiz.id(), finished.personId(), MOST_SITTINGS))));
    }

    private List<SittingRecords.Kept> answers(Handle handle, long sitting) {
        return store.listAnswers(handle, sitting).stream()
                .map(record -> kept(book.find(handle, record).orElseThrow()))
                .toList();
    }

    private static SittingRecords.Kept kept(StoredEntry entry) {
        return new SittingRecords.Kept(entry.sequence(), entry.bodyAs(RecordedAnswer.class));
    }
}
