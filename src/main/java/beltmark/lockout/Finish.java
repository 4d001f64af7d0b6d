package beltmark.lockout;

import beltmark.core.lockout.Judge;
import beltmark.core.lockout.Judgement;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuizResult;
import beltmark.lockout.FirstAttemptStore.FirstAttempt;
import beltmark.qualification.FactBook;
import beltmark.qualification.NewFact;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import java.time.Instant;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.jdbi.v3.core.Handle;

/** Ends a sitting in the same change as its last answer: records the result and moves the totals. */
final class Finish {

    private static final String RESULT = "lockout.result";

    private final RecordBook book;
    private final LockoutStore store = new LockoutStore();
    private final TotalsStore totals = new TotalsStore();
    private final FirstAttemptStore firsts = new FirstAttemptStore();
    private final FactBook facts = new FactBook();
    private final ZoneId zone;
    private final SiteProcedures procedures;

    /**
     * @param book where the result is recorded
     * @param zone of the site, for the day of a pass
     */
    Finish(RecordBook book, ZoneId zone) {
        this.book = book;
        this.zone = zone;
        this.procedures = new SiteProcedures(book);
    }

    void record(Handle handle, Sitter sitter, Sitting sitting, Instant now) {
        SittingFinished result = SittingFinished.of(sitting, QuizResult.of(sitting.quiz(), sitting.judgements()));
        // form operations have neither a full stop nor a slash, so nobody can send this one
        String operation = RESULT + "/" + sitting.id();
        Recorded recorded =
                book.append(handle, new Entry(RESULT, operation, sitter.personId(), sitter.personId(), now, result));
        if (firsts.isFirst(handle, sitter.personId(), result.quiz())) {
            countFirst(handle, sitter, sitting, result, now);
        }
        store.addResult(handle, recorded.sequence(), result, sitter, now);
        if (result.passed()) {
            NewFact pass = NewFact.quizPassed(sitter.personId(), result.quiz(), LocalDate.ofInstant(now, zone));
            facts.add(handle, recorded.sequence(), pass);
            procedures.hold(handle, sitting.quiz().questions(), sitter.personId(), recorded.sequence());
        }
        totals.close(handle, sitter.personId(), result, recorded.sequence());
        sitting.quiz().questions().forEach(question -> count(handle, sitter, sitting, question));
        for (String question : result.criticalMisses()) {
            totals.countCritical(handle, sitter.personId(), result.quiz(), question, recorded.sequence());
        }
    }

    private void count(Handle handle, Sitter sitter, Sitting sitting, Question question) {
        GivenAnswer answer = sitting.findAnswer(question).orElseThrow();
        boolean missed = answer.judgement() != Judgement.RIGHT;
        totals.count(handle, sitting.quiz(), sitter.crewId(), question.id(), missed);
        Judge.misses(question, answer.to(question))
                .forEach(miss -> totals.countMiss(handle, sitting.quiz(), sitter.crewId(), question.id(), miss));
    }

    private void countFirst(Handle handle, Sitter sitter, Sitting sitting, SittingFinished result, Instant now) {
        String month = YearMonth.from(now.atOffset(ZoneOffset.UTC)).toString();
        FirstAttempt attempt = new FirstAttempt(result.quiz(), sitter.crewId(), month, result.asked(), result.right());
        firsts.countScore(handle, attempt, result.passed());
        for (Question question : sitting.quiz().questions()) {
            GivenAnswer answer = sitting.findAnswer(question).orElseThrow();
            firsts.countQuestion(handle, attempt, question.id(), answer.judgement() == Judgement.RIGHT);
            Judge.misses(question, answer.to(question))
                    .forEach(miss -> firsts.countMiss(handle, attempt, question.id(), miss));
        }
    }
}
