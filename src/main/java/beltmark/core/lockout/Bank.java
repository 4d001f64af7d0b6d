package beltmark.core.lockout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * All questions there are, each id once. A question whose meaning or key changes gets a new id and the old one stays, so
 * that an id means the same for ever.
 *
 * @param questions the questions in the order of the files
 */
public record Bank(List<BankQuestion> questions) {

    /** Refuses two questions of the same id. */
    public Bank {
        questions = List.copyOf(questions);
        if (questions.stream().map(BankQuestion::id).distinct().count() < questions.size()) {
            throw new IllegalArgumentException("the bank has two questions of the same id");
        }
    }

    /** {@return the question of an id} */
    public Optional<BankQuestion> find(String id) {
        return questions.stream().filter(question -> question.id().equals(id)).findFirst();
    }

    /** {@return the questions a paper may ask at a site with these rule sets and switches} */
    public List<BankQuestion> allowed(Set<String> ruleSets, Switches switches) {
        return questions.stream()
                .filter(question -> question.mayBeAsked(ruleSets, switches))
                .toList();
    }

    /** {@return this bank and more questions, such as those made from the procedures of the site} */
    public Bank with(List<BankQuestion> more) {
        List<BankQuestion> all = new ArrayList<>(questions);
        all.addAll(more);
        return new Bank(all);
    }

    /** {@return how many questions there are under each of these headings, in the order they first come up} */
    public static Map<String, Long> count(List<String> headings) {
        Map<String, Long> counts = new LinkedHashMap<>();
        headings.forEach(heading -> counts.merge(heading, 1L, Long::sum));
        return counts;
    }
}
