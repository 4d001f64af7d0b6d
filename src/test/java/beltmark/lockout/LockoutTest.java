package beltmark.lockout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.content.QuizContent;
import beltmark.core.lockout.Answer;
import beltmark.core.lockout.Judgement;
import beltmark.core.lockout.Papers;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.units.Graduation;
import beltmark.db.Database;
import beltmark.recordbook.RecordBook;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LockoutTest {

    private static final Texts TEXTS = Texts.load(ZoneOffset.UTC);
    private static final Papers PAPERS = QuizContent.papers(TEXTS.keys()).withFixed("lockout");
    private static final Wording WORDING = new Wording(TEXTS.words(Language.EN, Graduation.SIXTEENTH_INCH));
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-05T12:00:00Z"), ZoneOffset.UTC);
    private static final Sitter SITTER = new Sitter(7, 3);

    private Database database;
    private Lockout lockout;
    private int forms;

    LockoutTest(@TempDir Path folder) {
        database = Database.open(folder);
        lockout = new Lockout(database, new RecordBook(CLOCK), PAPERS, CLOCK, (quiz, person, earlier) -> 42);
    }

    @BeforeEach
    void startCounting() {
        forms = 0;
    }

    @AfterEach
    void close() {
        database.close();
    }

    @Test
    void opensOneSittingAtATime() {
        long first = open("form-a");

        assertEquals(first, open("form-b"));
        assertEquals(1, count("lockout_sitting"));
    }

    @Test
    void passesWithEveryQuestionRight() {
        long sitting = sitAll(Set.of());

        assertTrue(lockout.listResults(SITTER.personId()).get(0).passed());
        assertEquals(20, count("lockout_answer"));
        assertEquals(List.of(), misses());
        assertTrue(lockout.findSitting(SITTER.personId(), sitting).orElseThrow().isFinished());
    }

    @Test
    void failsByOneCriticalMissWithEnoughRight() {
        sitAll(Set.of("stop-button"));

        PastResult result = lockout.listResults(SITTER.personId()).get(0);
        assertEquals(19, result.right());
        assertEquals(false, result.passed());
        assertEquals(1, count("lockout_critical"));
    }

    @Test
    void countsWhatWasMissedAndHow() {
        sitAll(Set.of("shift-change"));
        sitAll(Set.of("shift-change", "six-steps"));

        assertEquals(List.of("shift-change chosen a 2", "six-steps too-early c 1"), misses());
        assertEquals(40, sum("SELECT sum(asked) FROM lockout_count"));
        assertEquals(3, sum("SELECT sum(missed) FROM lockout_count"));
    }

    @Test
    void aPassIsKeptWhenALaterSittingFails() {
        sitAll(Set.of());
        long passed = sum("SELECT last_result FROM lockout_standing");
        sitAll(Set.of("stop-button"));

        assertEquals(passed, sum("SELECT passed_result FROM lockout_standing"));
        assertTrue(sum("SELECT last_result FROM lockout_standing") > passed);
    }

    @Test
    void theSameFormTwiceMakesOneRecord() {
        long sitting = open("form-a");

        assertEquals(Taken.RECORDED, answerFirst(sitting, "form-b", false));
        assertEquals(Taken.REPEATED, answerFirst(sitting, "form-b", true));
        assertEquals(1, count("lockout_answer"));
    }

    @Test
    void theFirstAnswerStands() {
        long sitting = open("form-a");
        answerFirst(sitting, "form-b", false);

        assertEquals(Taken.ALREADY_ANSWERED, answerFirst(sitting, "form-c", true));
        assertEquals("right", text("SELECT judgement FROM lockout_answer"));
    }

    @Test
    void questionsAreAnsweredInTheirOrder() {
        long sitting = open("form-a");

        Taken taken = lockout.answer(SITTER, sitting, 2, Answer.ofChosen(List.of("a")), WORDING, "form-b")
                .join();

        assertEquals(Taken.NOT_ITS_TURN, taken);
    }

    @Test
    void aBlankAnswerIsNotKept() {
        long sitting = open("form-a");

        Taken taken = lockout.answer(SITTER, sitting, 1, Answer.ofChosen(List.of()), WORDING, "form-b")
                .join();

        assertEquals(Taken.NOT_ANSWERED, taken);
        assertEquals(0, count("lockout_answer"));
    }

    @Test
    void aSittingIsNobodyElses() {
        long sitting = open("form-a");

        assertTrue(lockout.findSitting(8, sitting).isEmpty());
    }

    @Test
    void theRecordHoldsWhatWasShownAndTheKey() {
        long sitting = open("form-a");
        answerFirst(sitting, "form-b", false);
        Sitting found = lockout.findSitting(SITTER.personId(), sitting).orElseThrow();

        AnswerGiven kept = database.read(handle -> new RecordBook(CLOCK).find(handle, sitting + 1))
                .orElseThrow()
                .bodyAs(AnswerGiven.class);

        assertEquals(found.order().questions().get(0), kept.question());
        assertEquals(WORDING.ask(found.question(1)), kept.ask());
        assertEquals(found.question(1).right(), kept.right());
        assertEquals(
                found.order().optionsOf(kept.question()),
                kept.options().stream().map(AnswerGiven.ShownOption::id).toList());
    }

    private long open(String form) {
        return lockout.open(SITTER, "lockout", form).join().orElseThrow();
    }

    private long sitAll(Set<String> missed) {
        long sitting = open("form-" + ++forms);
        Sitting found = lockout.findSitting(SITTER.personId(), sitting).orElseThrow();
        for (int number = 1; number <= found.size(); number++) {
            Question question = found.question(number);
            Answer answer = missed.contains(question.id()) ? wrong(question) : right(question);
            lockout.answer(SITTER, sitting, number, answer, WORDING, "form-" + ++forms)
                    .join();
        }
        return sitting;
    }

    private Taken answerFirst(long sitting, String form, boolean wrong) {
        Question question =
                lockout.findSitting(SITTER.personId(), sitting).orElseThrow().question(1);
        return lockout.answer(SITTER, sitting, 1, wrong ? wrong(question) : right(question), WORDING, form)
                .join();
    }

    private static Answer right(Question question) {
        return new GivenAnswer(question.id(), question.right(), Judgement.RIGHT, "").to(question);
    }

    /** The first wrong option, or the right order backwards. */
    private static Answer wrong(Question question) {
        if (question.kind() == QuestionKind.PUT_IN_ORDER) {
            return Answer.ofOrder(question.right().stream()
                    .sorted((a, b) ->
                            question.right().indexOf(b) - question.right().indexOf(a))
                    .toList());
        }
        return Answer.ofChosen(question.options().stream()
                .filter(option -> !question.right().contains(option))
                .limit(1)
                .toList());
    }

    private List<String> misses() {
        return database.read(handle -> handle.createQuery(
                        "SELECT question || ' ' || kind || ' ' || option || ' ' || times FROM lockout_miss")
                .mapTo(String.class)
                .collect(Collectors.toList()));
    }

    private long count(String table) {
        return sum("SELECT count(*) FROM " + table);
    }

    private long sum(String query) {
        return database.read(
                handle -> handle.createQuery(query).mapTo(Long.class).one());
    }

    private String text(String query) {
        return database.read(
                handle -> handle.createQuery(query).mapTo(String.class).one());
    }
}
