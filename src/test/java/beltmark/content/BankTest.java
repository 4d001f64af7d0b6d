package beltmark.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.core.lockout.Bank;
import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Basis;
import beltmark.core.lockout.Mark;
import beltmark.core.lockout.Papers;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.units.Graduation;
import beltmark.texts.Language;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** The questions as they are shipped. What the facts are worth is told by {@code lockout/facts.csv}. */
class BankTest {

    private static final Texts TEXTS = Texts.load(ZoneOffset.UTC);
    private static final Papers PAPERS = QuizContent.papers(TEXTS.keys());
    private static final List<BankQuestion> BANK = PAPERS.bank().questions();
    private static final Map<String, CSVRecord> FACTS = facts();

    private static final Map<Language, String> GOOD_PRACTICE =
            Map.of(Language.EN, "Good practice", Language.ES, "Buena práctica");
    private static final String RULE_WORDS = "(?i).*\\b(rules?|law|requires?|regla|reglas|ley|exige)\\b.*";

    @Test
    void hasEnoughQuestionsOfEveryKind() {
        assertTrue(BANK.size() >= 120, "only " + BANK.size());
        assertTrue(count(question -> question.kind() == QuestionKind.SEVERAL_OF) >= 15);
        assertTrue(count(question -> question.kind() == QuestionKind.PUT_IN_ORDER) >= 7);
        assertTrue(count(question -> question.kind() == QuestionKind.MATCH) >= 4);
        assertTrue(count(question -> question.kind() == QuestionKind.SPOTS) >= 4);
    }

    @Test
    void noMarkIsBetterThanItsWeakestFactAllows() {
        for (BankQuestion question : BANK) {
            for (String fact : question.question().source().facts()) {
                CSVRecord row = Objects.requireNonNull(FACTS.get(fact), question.id() + " names " + fact);
                Mark best = Arrays.stream(row.get("marks").split(" ", -1))
                        .map(Mark::valueOf)
                        .reduce((one, other) -> one.compareTo(other) < 0 ? one : other)
                        .orElseThrow();
                assertTrue(question.question().source().mark().compareTo(best) >= 0, question.id() + " on " + fact);
            }
        }
    }

    @Test
    void aRuleIsAskedOnlyUnderTheRuleSetsOfItsFacts() {
        for (BankQuestion question : BANK) {
            Set<String> sets = new HashSet<>();
            question.question()
                    .source()
                    .facts()
                    .forEach(fact -> sets.addAll(List.of(
                            Objects.requireNonNull(FACTS.get(fact)).get("rules").split(" ", -1))));
            boolean free = sets.contains("any") || question.question().source().basis() == Basis.PRACTICE;
            assertTrue(
                    free || sets.containsAll(question.question().source().ruleSets()),
                    question.id() + " under " + sets);
        }
    }

    @Test
    void whatNoTextSaysIsNoRule() {
        BANK.stream()
                .map(question -> question.question().source())
                .filter(source -> source.mark() == Mark.INFERENCE)
                .forEach(source -> assertEquals(Basis.PRACTICE, source.basis(), source.paragraph()));
    }

    @Test
    void goodPracticeIsCalledSoAndNeverARule() {
        for (Language language : TEXTS.languages()) {
            for (BankQuestion question : BANK) {
                String why = text(language, question.question(), "why");
                String practice = Objects.requireNonNull(GOOD_PRACTICE.get(language));
                boolean isPractice = question.question().source().basis() == Basis.PRACTICE;
                assertEquals(isPractice, why.startsWith(practice), language + " " + question.id());
                assertFalse(isPractice && why.matches(RULE_WORDS), language + " " + question.id());
            }
        }
    }

    @Test
    void everyQuestionIsReviewedAndInEveryLanguage() {
        for (Language language : TEXTS.languages()) {
            for (BankQuestion question : BANK) {
                assertTrue(question.reviewed(), question.id());
                for (String part : List.of("name", "ask", "why")) {
                    assertFalse(text(language, question.question(), part).isBlank(), question.id());
                }
            }
        }
    }

    @Test
    void aCriticalQuestionIsNeverYesOrNoAlone() {
        BANK.stream().map(BankQuestion::question).filter(Question::critical).forEach(question -> {
            assertEquals(QuestionKind.CHOICE, question.kind(), question.id());
            assertTrue(question.options().size() >= 4, question.id());
        });
    }

    @Test
    void severalOfAsksForMoreThanOneAndLeavesSomethingOut() {
        BANK.stream()
                .map(BankQuestion::question)
                .filter(question -> question.kind().isSeveral())
                .forEach(question -> assertTrue(
                        question.right().size() > 1
                                && question.right().size() < question.options().size(),
                        question.id()));
    }

    @Test
    void noTwoOptionsOfAQuestionReadTheSame() {
        for (Language language : TEXTS.languages()) {
            for (BankQuestion question : BANK) {
                List<String> options = optionTexts(language, question.question());
                assertEquals(Set.copyOf(options).size(), options.size(), language + " " + question.id());
            }
        }
    }

    @Test
    void noTwoQuestionsAskTheSame() {
        for (Language language : TEXTS.languages()) {
            Set<String> asked = new HashSet<>();
            BANK.forEach(question ->
                    assertTrue(asked.add(text(language, question.question(), "ask")), language + " " + question.id()));
        }
    }

    @Test
    void theRightOptionIsNotUsuallyTheLongest() {
        List<Question> choices = BANK.stream()
                .map(BankQuestion::question)
                .filter(question -> question.kind() == QuestionKind.CHOICE)
                .toList();
        for (Language language : TEXTS.languages()) {
            long longest = choices.stream()
                    .filter(question -> rightIsLongest(language, question))
                    .count();
            assertTrue(longest <= choices.size() / 3, language + ": " + longest + " of " + choices.size());
        }
    }

    @Test
    void everyPointOfAPaperHasAQuestionUnderTheRuleSetsInForce() {
        Bank bank = PAPERS.bank();
        PAPERS.blueprints()
                .forEach(paper -> paper.points()
                        .forEach(point -> assertTrue(
                                bank
                                        .allowed(Set.copyOf(PAPERS.ruleSets()), beltmark.core.lockout.Switches.NONE)
                                        .stream()
                                        .anyMatch(question -> point.equals(question.point())
                                                && question.audience().fits(paper.audience())),
                                paper.id() + " " + point)));
    }

    private static boolean rightIsLongest(Language language, Question question) {
        int right = option(language, question, question.right().get(0)).length();
        return optionTexts(language, question).stream().allMatch(option -> option.length() <= right);
    }

    private static List<String> optionTexts(Language language, Question question) {
        if (question.kind() == QuestionKind.MATCH) {
            List<String> parts = new java.util.ArrayList<>(question.getMatch().rows());
            question.getMatch().columns().forEach(parts::addAll);
            return parts.stream().map(part -> option(language, question, part)).toList();
        }
        return question.options().stream()
                .map(option -> option(language, question, option))
                .toList();
    }

    private static String option(Language language, Question question, String option) {
        return text(language, question, "option." + option);
    }

    private static String text(Language language, Question question, String part) {
        Words words = TEXTS.words(language, Graduation.MILLIMETRE);
        return words.say("lockout.question." + question.id() + "." + part);
    }

    private static long count(Predicate<Question> wanted) {
        return BANK.stream().map(BankQuestion::question).filter(wanted).count();
    }

    private static Map<String, CSVRecord> facts() {
        try (InputStream file = Objects.requireNonNull(BankTest.class.getResourceAsStream("/lockout/facts.csv"));
                InputStreamReader reader = new InputStreamReader(file, StandardCharsets.UTF_8)) {
            Map<String, CSVRecord> facts = new HashMap<>();
            CSVFormat.DEFAULT
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(reader)
                    .forEach(row -> facts.put(row.get("id"), row));
            return facts;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
