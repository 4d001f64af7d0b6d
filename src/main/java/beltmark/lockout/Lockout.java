package beltmark.lockout;

import beltmark.core.lockout.Answer;
import beltmark.core.lockout.Judge;
import beltmark.core.lockout.Judgement;
import beltmark.core.lockout.Papers;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.Quiz;
import beltmark.db.Database;
import beltmark.qualification.FactBook;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import beltmark.web.NotFound;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;

/** What people do with the lockout quiz: open a sitting, answer its questions one by one, look at what came of it. */
public final class Lockout {

    private static final String OPENED = "lockout.sitting";
    private static final String ANSWERED = "lockout.answer";
    private static final int MOST_PAST_RESULTS = 20;

    private final Database database;
    private final RecordBook book;
    private final Draws draws;
    private final Clock clock;
    private final Seeds seeds;
    private final LockoutStore store = new LockoutStore();
    private final FactBook facts = new FactBook();
    private final TotalsStore totals = new TotalsStore();
    private final Finish finish;

    /**
     * @param database where sittings are kept
     * @param book where they are recorded
     * @param papers what can be sat
     * @param clock the time
     * @param seeds a number nobody can foresee, for each sitting
     */
    public Lockout(Database database, RecordBook book, Papers papers, Clock clock, Seeds seeds) {
        this.database = database;
        this.book = book;
        this.draws = new Draws(papers, book);
        this.clock = clock;
        this.seeds = seeds;
        this.finish = new Finish(book, clock.getZone());
    }

    /** {@return the papers that can be sat, each as far as this person has come with it} */
    List<Offer> listOffers(long person) {
        return database.read(handle -> draws.listQuizzes().stream()
                .map(quiz -> offer(handle, quiz, person))
                .toList());
    }

    private Offer offer(Handle handle, String quiz, long person) {
        OptionalLong open = store.findOpen(handle, person, quiz, draws.version(quiz));
        Sitting waiting =
                open.isPresent() ? find(handle, person, open.getAsLong()).orElse(null) : null;
        return new Offer(quiz, draws.draw(handle, quiz, 0).orElse(null), waiting);
    }

    /** Opens a sitting, or finds the one that waits to be finished; none when there are too few questions to ask. */
    public CompletableFuture<OptionalLong> open(Sitter sitter, String quiz, String operation) {
        if (!draws.listQuizzes().contains(quiz)) {
            throw new NotFound("quiz " + quiz);
        }
        return database.write(handle -> {
            OptionalLong waiting = store.findOpen(handle, sitter.personId(), quiz, draws.version(quiz));
            return waiting.isPresent() ? waiting : openNew(handle, sitter, quiz, operation);
        });
    }

    private OptionalLong openNew(Handle handle, Sitter sitter, String id, String operation) {
        long seed = seeds.of(id, sitter.personId(), draws.countSittings(handle, sitter.personId(), id));
        Optional<Quiz> drawn = draws.draw(handle, id, seed);
        if (drawn.isEmpty()) {
            return OptionalLong.empty();
        }
        Quiz quiz = drawn.get();
        Instant now = clock.instant();
        SittingOpened opened = SittingOpened.of(quiz, seed);
        Recorded recorded =
                book.append(handle, new Entry(OPENED, operation, sitter.personId(), sitter.personId(), now, opened));
        if (recorded.isNew()) {
            SittingRow row = new SittingRow(recorded.sequence(), sitter.personId(), quiz.id(), quiz.version(), seed);
            store.addSitting(handle, row, now);
            draws.keep(handle, row.id(), quiz);
            totals.open(handle, row);
        }
        return OptionalLong.of(recorded.sequence());
    }

    /** {@return the sitting, with its answers, if it is this person's and finished or of the version in force} */
    public Optional<Sitting> findSitting(long person, long sitting) {
        return database.read(handle -> find(handle, person, sitting));
    }

    /** {@return the person's latest results, the last one first} */
    List<PastResult> listResults(long person) {
        return database.read(handle -> store.listResults(handle, person, MOST_PAST_RESULTS));
    }

    /** Takes an answer; the first one to a question stands for ever. */
    public CompletableFuture<Taken> answer(
            Sitter sitter, long sitting, long number, Answer answer, Wording wording, String operation) {
        return database.write(handle -> {
            Sitting found =
                    find(handle, sitter.personId(), sitting).orElseThrow(() -> new NotFound("sitting " + sitting));
            Question question = found.question(number);
            Optional<GivenAnswer> earlier = found.findAnswer(question);
            if (earlier.isPresent()) {
                return earlier.get().operation().equals(operation) ? Taken.REPEATED : Taken.ALREADY_ANSWERED;
            }
            if (found.next().orElseThrow() != number) {
                return Taken.NOT_ITS_TURN;
            }
            Judgement judgement = Judge.judge(question, answer);
            if (!judgement.isAnswered()) {
                return Taken.NOT_ANSWERED;
            }
            AnswerGiven given = AnswerGiven.of(found, (int) number, answer, judgement, wording);
            return record(handle, sitter, found, given, operation);
        });
    }

    private Taken record(Handle handle, Sitter sitter, Sitting sitting, AnswerGiven answer, String operation) {
        Instant now = clock.instant();
        Recorded recorded =
                book.append(handle, new Entry(ANSWERED, operation, sitter.personId(), sitter.personId(), now, answer));
        if (!recorded.isNew()) {
            return Taken.REPEATED;
        }
        store.addAnswer(handle, recorded.sequence(), answer, now);
        facts.active(handle, recorded.sequence(), sitter.personId(), LocalDate.ofInstant(now, clock.getZone()));
        Sitting after = sitting.with(answer.given(operation));
        if (after.isFinished()) {
            finish.record(handle, sitter, after, now);
        }
        return Taken.RECORDED;
    }

    private Optional<Sitting> find(Handle handle, long person, long sitting) {
        return store.findSitting(handle, sitting)
                .filter(row -> row.personId() == person)
                .flatMap(row -> draws.find(handle, row)
                        .map(quiz -> Sitting.of(row, quiz, store.listAnswers(handle, sitting)))
                        .filter(found -> found.isFinished() || row.version() == draws.version(row.quiz())));
    }
}
