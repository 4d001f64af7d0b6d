package beltmark.review;

import beltmark.core.lockout.Quiz;
import beltmark.db.Database;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.StoredEntry;
import beltmark.review.first.FirstTotals;
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
    private final List<Quiz> quizzes;
    private final Clock clock;
    private final ReviewStore store = new ReviewStore();
    private final FirstTotals firstTotals = new FirstTotals();

    /**
     * @param database where the records are
     * @param book the record book
     * @param quizzes the papers with all their questions, the usual one first; at least one
     * @param clock the time
     */
    public Review(Database database, RecordBook book, List<Quiz> quizzes, Clock clock) {
        this.database = database;
        this.book = book;
        this.quizzes = List.copyOf(quizzes);
        this.clock = clock;
    }

    /** {@return the ids of the papers} */
    List<String> listPapers() {
        return quizzes.stream().map(Quiz::id).toList();
    }

    /** {@return the paper of that id, the usual one if it is empty; throws {@link NotFound} for any other} */
    Quiz getPaper(String id) {
        return quizzes.stream()
                .filter(quiz -> id.isEmpty() || quiz.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new NotFound("paper " + id));
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

    /** {@return how things are} */
    Overview overview(Scope scope) {
        Instant now = clock.instant();
        return database.read(handle -> new Overview(
                now,
                scope,
                store.listCrews(handle),
                firstTotals.listMonths(handle, scope.quiz()),
                store.countPassed(handle, scope),
                store.listStandings(handle, scope),
                firstTotals.of(handle, scope.quiz(), scope.crew(), scope.period()),
                store.listCritical(handle, scope, MOST_CRITICAL)));
    }

    /** {@return every finished sitting of a paper by one crew or by all, in the order they were finished} */
    List<FinishedSitting> listFinished(String paper, long crew) {
        return database.read(handle -> store.listFinished(handle, Scope.of(paper, crew)));
    }

    /** {@return a finished sitting with its answers and the other sittings of that person} */
    Optional<SittingRecords> findSitting(long sitting) {
        return database.read(handle -> store.findFinished(handle, sitting)
                .map(finished -> new SittingRecords(
                        finished,
                        answers(handle, sitting),
                        store.listOfPerson(handle, finished.paper(), finished.personId(), MOST_SITTINGS))));
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
