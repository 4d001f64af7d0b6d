package beltmark.core.lockout;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What can be sat: papers drawn from the bank, and quizzes with fixed questions, among them those of earlier versions.
 *
 * @param bank all questions
 * @param blueprints the plans in force, each id once
 * @param fixed quizzes that ask everybody the same questions
 * @param ruleSets the rule sets in force until the coordinator chooses others
 */
public record Papers(Bank bank, List<Blueprint> blueprints, List<Quiz> fixed, List<String> ruleSets) {

    public Papers {
        blueprints = List.copyOf(blueprints);
        fixed = List.copyOf(fixed);
        ruleSets = List.copyOf(ruleSets);
    }

    /** {@return the plan of that quiz, if it is drawn} */
    public Optional<Blueprint> findBlueprint(String quiz) {
        return blueprints.stream().filter(plan -> plan.id().equals(quiz)).findFirst();
    }

    /** {@return the quiz with fixed questions of that id and version} */
    public Optional<Quiz> findFixed(String quiz, int version) {
        return fixed.stream()
                .filter(one -> one.id().equals(quiz) && one.version() == version)
                .findFirst();
    }

    /** {@return the same without the plan of one quiz, so that its fixed questions are in force} */
    public Papers withFixed(String quiz) {
        return new Papers(
                bank,
                blueprints.stream().filter(plan -> !plan.id().equals(quiz)).toList(),
                fixed,
                ruleSets);
    }

    /** {@return every question that quiz can ask, as one quiz in the version in force, for those who review it} */
    public Quiz whole(String quiz) {
        return findBlueprint(quiz)
                .map(plan -> new Quiz(
                        plan.id(),
                        plan.version(),
                        plan.passPercent(),
                        bank.questions().stream()
                                .filter(question -> question.audience().fits(plan.audience()))
                                .map(BankQuestion::question)
                                .toList()))
                .orElseGet(() -> latestFixed(quiz));
    }

    /** {@return every paper with all it can ask, the one for authorized employees first} */
    public List<Quiz> all() {
        return ids().stream().map(this::whole).toList();
    }

    /** {@return the ids of what can be sat, the paper for authorized employees first} */
    public List<String> ids() {
        List<String> drawn = blueprints.stream().map(Blueprint::id).toList();
        return Stream.concat(fixed.stream().map(Quiz::id).distinct().filter(id -> !drawn.contains(id)), drawn.stream())
                .toList();
    }

    private Quiz latestFixed(String quiz) {
        return fixed.stream()
                .filter(one -> one.id().equals(quiz))
                .reduce((one, next) -> next.version() > one.version() ? next : one)
                .orElseThrow(() -> new IllegalArgumentException("there is no quiz " + quiz));
    }
}
