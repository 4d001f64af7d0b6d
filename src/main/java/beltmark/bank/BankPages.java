package beltmark.bank;

import beltmark.bank.BankPage.Choice;
import beltmark.bank.BankPage.Count;
import beltmark.bank.BankPage.Filter;
import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Mark;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.lockout.Source;
import beltmark.core.lockout.Switches;
import beltmark.web.Form;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.View;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/** Makes the list of the bank for one visitor. */
record BankPages(View view, List<BankQuestion> bank, List<String> ruleSets, Switches switches) {

    BankPage list(Form asked, boolean refused) {
        List<Narrowing> narrowings = narrowings();
        Predicate<BankQuestion> wanted = narrowings.stream()
                .map(narrowing -> narrowing.wanted(asked.text(narrowing.name())))
                .reduce(question -> true, Predicate::and);
        return new BankPage(
                view,
                narrowings.stream()
                        .map(narrowing -> filter(narrowing, asked.text(narrowing.name())))
                        .toList(),
                counts(narrowings),
                bank.stream().filter(wanted).map(this::row).toList(),
                QuestionControl.RULE_SETS.stream()
                        .map(rules -> new BankPage.Rules(rules, rules(rules), ruleSets.contains(rules)))
                        .toList(),
                view.has(Role.COORDINATOR),
                refused,
                OperationId.fresh());
    }

    /**
     * Something the list can be narrowed by.
     *
     * @param name the name of the field
     * @param values the values there are
     * @param of the values of a question
     * @param told a value in words
     */
    private record Narrowing(
            String name, List<String> values, Function<BankQuestion, List<String>> of, Function<String, String> told) {

        Predicate<BankQuestion> wanted(String value) {
            return question -> value.isEmpty() || of.apply(question).contains(value);
        }
    }

    private List<Narrowing> narrowings() {
        List<String> topics = bank.stream().map(BankQuestion::topic).distinct().toList();
        return List.of(
                new Narrowing(
                        "rules",
                        QuestionControl.RULE_SETS,
                        question -> source(question).ruleSets(),
                        this::rules),
                new Narrowing(
                        "mark",
                        Arrays.stream(Mark.values()).map(Mark::id).toList(),
                        question -> List.of(source(question).mark().id()),
                        this::mark),
                new Narrowing(
                        "kind",
                        Arrays.stream(QuestionKind.values())
                                .map(QuestionKind::id)
                                .toList(),
                        question -> List.of(question.question().kind().id()),
                        kind -> view.text("bank.kind." + kind)),
                new Narrowing(
                        "topic",
                        topics,
                        question -> List.of(question.topic()),
                        topic -> view.text("bank.topic." + topic)),
                new Narrowing(
                        "state",
                        Arrays.stream(QuestionState.values())
                                .map(QuestionState::id)
                                .toList(),
                        question -> List.of(state(question)),
                        state -> view.text("bank.state." + state)));
    }

    private Filter filter(Narrowing narrowing, String chosen) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice("", view.text("bank.page.all"), chosen.isEmpty()));
        narrowing
                .values()
                .forEach(value -> choices.add(new Choice(value, narrowing.told().apply(value), value.equals(chosen))));
        return new Filter(narrowing.name(), view.text("bank.page.filter." + narrowing.name()), choices);
    }

    /** How many there are and how many are asked, by rule set, mark and kind. */
    private List<Count> counts(List<Narrowing> narrowings) {
        List<Count> counts = new ArrayList<>();
        counts.add(count(view.text("bank.page.all"), question -> true));
        for (Narrowing narrowing : narrowings.subList(0, 3)) {
            narrowing
                    .values()
                    .forEach(value -> counts.add(count(narrowing.told().apply(value), narrowing.wanted(value))));
        }
        return counts;
    }

    private Count count(String heading, Predicate<BankQuestion> counted) {
        return new Count(
                heading,
                bank.stream().filter(counted).count(),
                bank.stream()
                        .filter(counted)
                        .filter(question -> state(question).equals(QuestionState.ASKED.id()))
                        .count());
    }

    private BankPage.Row row(BankQuestion question) {
        return new BankPage.Row(
                question.id(),
                view.text("lockout.question." + question.id() + ".name"),
                view.text("bank.topic." + question.topic()),
                view.text("bank.kind." + question.question().kind().id()),
                mark(source(question).mark().id()),
                String.join(
                        ", ",
                        source(question).ruleSets().stream().map(this::rules).toList()),
                view.text("bank.state." + state(question)),
                state(question));
    }

    String state(BankQuestion question) {
        return QuestionState.of(question, ruleSets, switches).id();
    }

    String mark(String mark) {
        return view.text("bank.mark." + Mark.valueOf(mark).name().toLowerCase(java.util.Locale.ROOT));
    }

    String rules(String rules) {
        return view.text("lockout.rules." + rules);
    }

    private static Source source(BankQuestion question) {
        return question.question().source();
    }
}
