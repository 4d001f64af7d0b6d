package beltmark.lockout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.content.QuizContent;
import beltmark.core.lockout.Answer;
import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Papers;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.lockout.Quiz;
import beltmark.core.units.Graduation;
import beltmark.db.Database;
import beltmark.recordbook.RecordBook;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.web.Assets;
import beltmark.web.Cookies;
import beltmark.web.Html;
import beltmark.web.Role;
import beltmark.web.Views;
import beltmark.web.Visitor;
import beltmark.web.WebServer;
import io.javalin.Javalin;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two sites with the same seed and another key each: before an answer not one byte of a page may differ. */
class KeySecrecyTest {

    private static final Texts TEXTS = Texts.load(ZoneOffset.UTC);
    private static final Papers PAPERS = QuizContent.papers(TEXTS.keys());
    private static final Quiz QUIZ = new Quiz(
            "lockout",
            1,
            80,
            PAPERS.bank().questions().stream().map(BankQuestion::question).toList());
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-05T12:00:00Z"), ZoneOffset.UTC);
    private static final Visitor VISITOR =
            new Visitor(7, "Ana", 3, Set.of(Role.NEW_HIRE), Language.EN, Graduation.MILLIMETRE);

    @Test
    void nothingOnAQuestionPageDependsOnTheKey(@TempDir Path one, @TempDir Path other) throws Exception {
        Quiz otherKey = withOtherKeys(QUIZ);
        for (int position = 0; position < QUIZ.questions().size(); position++) {
            assertNotEquals(
                    QUIZ.questions().get(position).right(),
                    otherKey.questions().get(position).right());
        }
        List<String> pages = questionPages(one, QUIZ);
        pages.forEach(page -> assertTrue(page.contains("<fieldset class=\"ask\"")));
        assertEquals(pages, questionPages(other, otherKey));
    }

    private static Quiz withOtherKeys(Quiz quiz) {
        return new Quiz(
                quiz.id(),
                quiz.version(),
                quiz.passPercent(),
                quiz.questions().stream().map(KeySecrecyTest::withOtherKey).toList());
    }

    private static Question withOtherKey(Question question) {
        List<String> right = new ArrayList<>(question.right());
        if (question.kind() == QuestionKind.MATCH) {
            return Question.ofMatch(
                    question.id(), question.critical(), question.getMatch(), moved(question), question.source());
        }
        if (question.kind() == QuestionKind.PUT_IN_ORDER) {
            Collections.reverse(right);
        } else {
            right = new ArrayList<>(question.options());
            right.removeAll(question.right());
            right = question.kind() == QuestionKind.CHOICE ? right.subList(0, 1) : right;
        }
        return new Question(
                question.id(), question.kind(), question.critical(), question.options(), right, question.source());
    }

    /** Every row gets another target than before, in every column. */
    private static List<String> moved(Question question) {
        return question.getMatch().cells().stream()
                .map(cell -> cell.stream()
                        .filter(pair -> !question.right().contains(pair))
                        .findFirst()
                        .orElseThrow())
                .toList();
    }

    /** Every question page of a sitting, answered on with the same marks whatever the key. */
    private static List<String> questionPages(Path folder, Quiz quiz) throws IOException, InterruptedException {
        List<String> pages = new ArrayList<>();
        try (Database database = Database.open(folder)) {
            Papers papers = new Papers(PAPERS.bank(), List.of(), List.of(quiz), List.of("osha-gi"));
            Lockout lockout = new Lockout(database, new RecordBook(CLOCK), papers, CLOCK, (id, person, earlier) -> 42);
            Sitter sitter = Sitter.of(VISITOR);
            long id = lockout.open(sitter, "lockout", "form").join().orElseThrow();
            Javalin server = server(lockout).start("127.0.0.1", 0);
            for (int number = 1; number <= quiz.questions().size(); number++) {
                pages.add(page(server.port(), id, number));
                Sitting sitting = lockout.findSitting(VISITOR.personId(), id).orElseThrow();
                lockout.answer(sitter, id, number, firstOptions(sitting, number), wording(), "form-" + number)
                        .join();
            }
            server.stop();
        }
        return pages;
    }

    private static Answer firstOptions(Sitting sitting, int number) {
        Question question = sitting.question(number);
        List<String> shown = sitting.order().optionsOf(question.id());
        return switch (question.kind()) {
            case PUT_IN_ORDER -> Answer.ofOrder(shown);
            case MATCH ->
                Answer.ofChosen(question.getMatch().cells().stream()
                        .map(cell -> cell.get(0))
                        .toList());
            case CHOICE, SEVERAL_OF, SPOTS -> Answer.ofChosen(shown.subList(0, 1));
        };
    }

    private static Wording wording() {
        return new Wording(TEXTS.words(Language.EN, Graduation.MILLIMETRE));
    }

    private static Javalin server(Lockout lockout) {
        Assets assets = Assets.load();
        Html html = new Html();
        Views views =
                new Views(TEXTS, token -> Optional.of(VISITOR), new Cookies(false), new byte[32], assets, () -> true);
        return new WebServer(views, html, assets, false)
                .create(routes -> new LockoutRoutes(lockout, views, html).register(routes));
    }

    /** The page as it is sent, but for the random id of its form. */
    private static String page(int port, long sitting, int number) throws IOException, InterruptedException {
        URI address = URI.create("http://127.0.0.1:" + port + "/lockout/" + sitting + "/" + number);
        HttpRequest request =
                HttpRequest.newBuilder(address).header("Cookie", "s=token").build();
        String page = HttpClient.newHttpClient()
                .send(request, BodyHandlers.ofString())
                .body();
        return page.replaceAll("name=\"operation\" value=\"[A-Za-z0-9_-]{22}\"", "");
    }
}
