package beltmark.practice;

import beltmark.content.Content;
import beltmark.core.grading.Leaving;
import beltmark.core.grading.PartGrade;
import beltmark.core.grading.Working;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.units.LengthUnit;
import beltmark.db.Database;
import beltmark.mastery.Skills;
import beltmark.practice.AttemptStore.Event;
import beltmark.qualification.FactBook;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import beltmark.texts.Words;
import beltmark.web.NotFound;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;

/** The verbs of practice: look at a problem, answer a part of it, leave a part. */
public final class Practice {

    private final Database database;
    private final RecordBook book;
    private final Content content;
    private final Clock clock;
    private final AttemptStore store = new AttemptStore();
    private final Progress progress = new Progress();
    private final FactBook facts = new FactBook();

    public Practice(Database database, RecordBook book, Content content, Clock clock) {
        this.database = database;
        this.book = book;
        this.content = content;
        this.clock = clock;
    }

    /** What came of sending an answer. */
    public enum Outcome {
        /** It is recorded, now or by an earlier sending of the same form. */
        RECORDED,
        /** Something in it could not be read; nothing is recorded. */
        UNREADABLE,
        /** The part is not the one to be answered now, as in a second tab; nothing is recorded. */
        NOT_OPEN
    }

    /**
     * What came of sending an answer, and where the attempt stands.
     *
     * @param outcome what came of it
     * @param attempt the attempt as stored
     * @param grade how the answer was judged, when it was unreadable; empty grades otherwise
     */
    public record Answered(Outcome outcome, Attempt attempt, PartGrade grade) {}

    /** {@return a family; throws {@link NotFound} where there is none of that id} */
    ProblemFamily getFamily(String id) {
        return content.findFamily(id).orElseThrow(() -> new NotFound("no problem family " + id));
    }

    /** {@return the problem of a typed code; throws {@link NotFound} for what is no code} */
    public Problem getProblem(String family, String code) {
        ProblemCode parsed = ProblemCode.parse(code).orElseThrow(() -> new NotFound("no problem code"));
        return getFamily(family).problem(parsed);
    }

    /** {@return where a person stands with each family} */
    List<SkillLine> skills(Visitor person, Words words) {
        List<String> families =
                content.families().stream().map(ProblemFamily::id).toList();
        return new SkillLines(words)
                .of(families, database.read(handle -> new Skills().states(handle, person.personId())));
    }

    /** {@return how far a person has come with a problem} */
    Attempt attempt(Visitor person, Problem problem) {
        return database.read(handle -> load(handle, person.personId(), problem));
    }

    /** Judges and records an answer to a part; recording is done when the result is there. */
    public CompletableFuture<Answered> answer(
            Visitor person, Problem problem, String part, Map<String, String> typed, OperationId operation) {
        LengthUnit unit = person.graduation().unit();
        return database.write(handle -> {
            Attempt before = load(handle, person.personId(), problem);
            if (book.isRecorded(handle, operation.value())) {
                return new Answered(Outcome.RECORDED, before, new PartGrade(Map.of()));
            }
            Optional<Part> open = before.working().open(part).map(Working.PartWorking::part);
            if (open.isEmpty()) {
                return new Answered(Outcome.NOT_OPEN, before, new PartGrade(Map.of()));
            }
            PartGrade grade =
                    PartGrade.of(open.get(), typed, unit, before.working().own());
            return grade.isReadable()
                    ? recordAnswer(handle, new Sending(Worker.of(person), before, operation), open.get(), typed, grade)
                    : new Answered(Outcome.UNREADABLE, before, grade);
        });
    }

    /** Leaves the open part without its being right. */
    CompletableFuture<Answered> leave(
            Visitor person, Problem problem, String part, Leaving how, OperationId operation) {
        return database.write(handle -> {
            Attempt before = load(handle, person.personId(), problem);
            boolean recorded = book.isRecorded(handle, operation.value());
            if (recorded || before.working().open(part).isEmpty()) {
                return new Answered(recorded ? Outcome.RECORDED : Outcome.NOT_OPEN, before, new PartGrade(Map.of()));
            }
            return recordLeaving(handle, new Sending(Worker.of(person), before, operation), part, how);
        });
    }

    private Answered recordLeaving(Handle handle, Sending sending, String part, Leaving how) {
        Problem problem = sending.problem();
        LeavingRecord body = new LeavingRecord(
                problem.family(), problem.version(), problem.code().text(), part, how.id());
        return record(handle, sending, "practice.leaving", body, new Event(part, how.id(), List.of()));
    }

    /**
     * Records what somebody worked on paper, part by part, as if it had been given on screen: a part that is not right is
     * left with the own figure, so that the next one is judged from it. For use inside a change of the database; nothing may
     * be unreadable.
     *
     * @param typed what was written for each part that was worked, in order, by the part's id
     * @param operations names for the records, one after the other
     */
    public void enter(
            Handle handle,
            Worker worker,
            Problem problem,
            Map<String, Map<String, String>> typed,
            Iterator<OperationId> operations) {
        Attempt attempt = load(handle, worker.person(), problem);
        for (Part part : problem.parts()) {
            Map<String, String> written = typed.get(part.id());
            if (written == null || attempt.working().open(part.id()).isEmpty()) {
                return;
            }
            PartGrade grade = PartGrade.of(
                    part, written, worker.graduation().unit(), attempt.working().own());
            attempt = recordAnswer(handle, new Sending(worker, attempt, operations.next()), part, written, grade)
                    .attempt();
            if (attempt.working().open(part.id()).isPresent()) {
                attempt = recordLeaving(
                                handle, new Sending(worker, attempt, operations.next()), part.id(), Leaving.OWN_FIGURE)
                        .attempt();
            }
        }
    }

    private record Sending(Worker worker, Attempt before, OperationId operation) {

        Problem problem() {
            return before.working().problem();
        }
    }

    private Answered recordAnswer(
            Handle handle, Sending sending, Part part, Map<String, String> typed, PartGrade grade) {
        List<Figure> figures = new ArrayList<>();
        grade.grades().forEach((blank, judged) -> figures.add(Figure.of(blank, typed.getOrDefault(blank, ""), judged)));
        AnswerRecord body = AnswerRecord.of(sending.problem(), part, sending.worker(), figures);
        Event event = new Event(part.id(), grade.worst().id(), figures);
        return record(handle, sending, "practice.answer", body, event);
    }

    private Answered record(Handle handle, Sending sending, String kind, Record body, Event event) {
        long person = sending.worker().person();
        Instant now = clock.instant();
        Recorded recorded = book.append(
                handle,
                new Entry(
                        kind,
                        sending.operation().value(),
                        person,
                        sending.worker().actor(),
                        now,
                        body));
        long attempt = store.findAttempt(handle, person, sending.problem())
                .orElseGet(() -> store.addAttempt(handle, person, sending.problem()));
        store.addEvent(handle, recorded.sequence(), attempt, event, now);
        Attempt after = sending.before().after(event);
        LocalDate on = LocalDate.ofInstant(now, clock.getZone());
        facts.active(handle, recorded.sequence(), person, on);
        progress.count(handle, person, sending.before(), after, event, on);
        if (after.working().isFinished()) {
            String family = sending.problem().family();
            store.finish(handle, attempt, person, family, after.working().isClean(), now);
            if (after.working().isClean()) {
                facts.clean(handle, recorded.sequence(), person, family, on);
            }
        }
        return new Answered(Outcome.RECORDED, after, new PartGrade(Map.of()));
    }

    private Attempt load(Handle handle, long person, Problem problem) {
        List<Event> events = store.findAttempt(handle, person, problem)
                .map(attempt -> store.listEvents(handle, attempt))
                .orElse(List.of());
        return Attempt.of(problem, events);
    }
}
