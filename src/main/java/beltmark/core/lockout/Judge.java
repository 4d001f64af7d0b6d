package beltmark.core.lockout;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Judges an answer to a question of the lockout quiz. There is no partial credit: a question is right or it is not. */
public final class Judge {

    private Judge() {}

    /**
     * Judges an answer.
     *
     * @param question the question with its key
     * @param answer what was marked, however odd
     * @return right, wrong, or why the question is not answered yet
     */
    public static Judgement judge(Question question, Answer answer) {
        if (answer.places().isEmpty()) {
            return Judgement.BLANK;
        }
        if (!question.options().containsAll(answer.places().keySet())) {
            return Judgement.NOT_OFFERED;
        }
        return switch (question.kind()) {
            case CHOICE -> answer.places().size() > 1 ? Judgement.SEVERAL_CHOSEN : compare(question, answer);
            case SEVERAL_OF, SPOTS -> compare(question, answer);
            case PUT_IN_ORDER -> judgeOrder(question, answer);
            case MATCH -> judgeMatch(question, answer);
        };
    }

    /**
     * Names what was wrong in a wrong answer: each wrong option or pair chosen, each right option left out; of an order
     * the first item that came before its turn, because what follows is moved by it.
     *
     * @param question the question with its key
     * @param answer an answer that is judged right or wrong
     * @return the misses in the order of the question's options; none for a right answer
     */
    public static List<Miss> misses(Question question, Answer answer) {
        return question.kind() == QuestionKind.PUT_IN_ORDER
                ? firstOutOfOrder(question, answer)
                : wrongMarks(question, answer.places().keySet());
    }

    private static Judgement compare(Question question, Answer answer) {
        return answer.places().keySet().equals(Set.copyOf(question.right())) ? Judgement.RIGHT : Judgement.WRONG;
    }

    private static Judgement judgeOrder(Question question, Answer answer) {
        Map<String, Integer> places = answer.places();
        int items = question.options().size();
        if (places.values().stream().anyMatch(place -> place < 1 || place > items)) {
            return Judgement.NOT_OFFERED;
        }
        if (new HashSet<>(places.values()).size() < places.size()) {
            return Judgement.PLACE_TWICE;
        }
        if (places.size() < items) {
            return Judgement.PLACE_MISSING;
        }
        return answer.inOrder().equals(question.right()) ? Judgement.RIGHT : Judgement.WRONG;
    }

    private static Judgement judgeMatch(Question question, Answer answer) {
        Set<String> marked = answer.places().keySet();
        for (List<String> cell : question.getMatch().cells()) {
            long chosen = cell.stream().filter(marked::contains).count();
            if (chosen != 1) {
                return chosen == 0 ? Judgement.MATCH_MISSING : Judgement.NOT_OFFERED;
            }
        }
        return compare(question, answer);
    }

    private static List<Miss> wrongMarks(Question question, Set<String> marked) {
        List<Miss> misses = new ArrayList<>();
        for (String option : question.options()) {
            boolean right = question.right().contains(option);
            if (right != marked.contains(option) && (!right || question.kind().isSeveral())) {
                misses.add(new Miss(right ? MissKind.LEFT_OUT : MissKind.CHOSEN, option));
            }
        }
        return misses;
    }

    private static List<Miss> firstOutOfOrder(Question question, Answer answer) {
        List<String> given = answer.inOrder();
        for (int place = 0; place < given.size(); place++) {
            if (!given.get(place).equals(question.right().get(place))) {
                return List.of(new Miss(MissKind.TOO_EARLY, given.get(place)));
            }
        }
        return List.of();
    }
}
