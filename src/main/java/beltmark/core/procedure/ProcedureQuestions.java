package beltmark.core.procedure;

import beltmark.core.lockout.Audience;
import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Basis;
import beltmark.core.lockout.Mark;
import beltmark.core.lockout.Match;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.lockout.Source;
import beltmark.core.lockout.Told;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/** The questions that follow from a procedure: the order of its steps, its isolation points, what shows that each works. */
public final class ProcedureQuestions {

    /** The topic of these questions in the plan of a paper. */
    public static final String TOPIC = "procedure";

    /** The rule set they belong to: the site's own. */
    public static final String RULE_SET = "site";

    /** Things that stop and do not isolate; their wording is in the text files. */
    private static final List<String> TRAPS = List.of("push-button", "pull-cord", "selector");

    private static final String SEPARATOR = ".";

    private ProcedureQuestions() {}

    /** {@return the questions of a version} */
    public static List<BankQuestion> of(ProcedureCard card) {
        List<BankQuestion> questions = new ArrayList<>();
        if (card.steps().stream().distinct().count() == card.steps().size()) {
            questions.add(banked(order(card)));
        }
        if (card.points().stream().map(ProcedureCard.Point::name).distinct().count()
                == card.points().size()) {
            questions.add(banked(points(card)));
            if (card.points().size() > 1
                    && card.verifications().distinct().count() == card.points().size()) {
                questions.add(banked(proofs(card)));
            }
        }
        return questions;
    }

    /** {@return the id and the version of the procedure of a question; nothing for other questions} */
    public static List<String> procedureOf(String question) {
        String[] parts = question.split("\\.", -1);
        return parts.length == 4 && parts[0].equals(TOPIC) ? List.of(parts[1], parts[2]) : List.of();
    }

    private static Question order(ProcedureCard card) {
        List<String> ids = IntStream.range(0, card.steps().size())
                .mapToObj(i -> letter('a', i))
                .toList();
        Map<String, String> texts = new HashMap<>();
        ids.forEach(id -> texts.put(id, card.steps().get(ids.indexOf(id))));
        return question(card, "order", QuestionKind.PUT_IN_ORDER, ids, ids, null, texts);
    }

    private static Question points(ProcedureCard card) {
        Map<String, String> texts = new HashMap<>();
        List<String> right = new ArrayList<>();
        for (int i = 0; i < card.points().size(); i++) {
            right.add(letter('a', i));
            texts.put(right.get(i), card.points().get(i).name());
        }
        List<String> options = new ArrayList<>(right);
        options.addAll(TRAPS);
        return question(card, "points", QuestionKind.SEVERAL_OF, options, right, null, texts);
    }

    private static Question proofs(ProcedureCard card) {
        Map<String, String> texts = new HashMap<>();
        List<String> rows = new ArrayList<>();
        List<String> targets = new ArrayList<>();
        List<String> right = new ArrayList<>();
        for (int i = 0; i < card.points().size(); i++) {
            rows.add(letter('a', i));
            targets.add(letter('k', i));
            texts.put(rows.get(i), card.points().get(i).name());
            texts.put(targets.get(i), card.points().get(i).verification());
            right.add(Match.pair(rows.get(i), targets.get(i)));
        }
        Match match = new Match(rows, List.of(targets));
        return question(card, "proofs", QuestionKind.MATCH, match.pairs(), right, match, texts);
    }

    private static Question question(
            ProcedureCard card,
            String form,
            QuestionKind kind,
            List<String> options,
            List<String> right,
            @Nullable Match match,
            Map<String, String> texts) {
        String id = String.join(SEPARATOR, TOPIC, card.id(), Integer.toString(card.version()), form);
        Source source = new Source(
                List.of(card.qualificationId()),
                card.machine() + ", v. " + card.version(),
                List.of(RULE_SET),
                Mark.SAW,
                Basis.PROCEDURE);
        Told told = new Told(form, card.machine(), card.version(), texts);
        return new Question(id, kind, false, options, right, source, match, told);
    }

    private static String letter(char first, int place) {
        return String.valueOf((char) (first + place));
    }

    private static BankQuestion banked(Question question) {
        return new BankQuestion(question, TOPIC, Audience.AUTHORIZED, null, true);
    }
}
