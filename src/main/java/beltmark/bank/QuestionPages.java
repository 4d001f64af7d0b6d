package beltmark.bank;

import beltmark.bank.QuestionPage.Fact;
import beltmark.bank.QuestionPage.Lever;
import beltmark.bank.QuestionPage.Option;
import beltmark.bank.QuestionPage.Reading;
import beltmark.bank.QuestionPage.Setting;
import beltmark.core.lockout.BankQuestion;
import beltmark.core.lockout.Match;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.lockout.Source;
import beltmark.texts.Texts;
import beltmark.texts.Words;
import beltmark.web.OperationId;
import beltmark.web.Role;
import beltmark.web.View;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Makes the page of one question, with its key, in every language there is. */
record QuestionPages(BankPages pages, Texts texts) {

    QuestionPage show(BankQuestion question, List<SetAt> settings) {
        View view = pages.view();
        return new QuestionPage(
                view,
                question.id(),
                view.text(key(question.question(), "name")),
                view.text("bank.state." + pages.state(question)),
                facts(question),
                texts.languages().stream()
                        .map(language -> reading(
                                question.question(),
                                texts.words(language, view.words().graduation())))
                        .toList(),
                view.has(Role.COORDINATOR) ? levers(question) : List.of(),
                settings.stream().map(this::setting).toList(),
                OperationId.fresh());
    }

    private List<Fact> facts(BankQuestion question) {
        View view = pages.view();
        Source source = question.question().source();
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(view.text("bank.question.source"), source.paragraph()));
        facts.add(new Fact(
                view.text("bank.question.mark"), pages.mark(source.mark().id())));
        facts.add(new Fact(view.text("bank.question.facts"), String.join(", ", source.facts())));
        facts.add(new Fact(
                view.text("bank.question.basis"),
                view.text("lockout.basis." + source.basis().id())));
        facts.add(new Fact(
                view.text("bank.page.filter.rules"),
                String.join(", ", source.ruleSets().stream().map(pages::rules).toList())));
        facts.add(new Fact(
                view.text("bank.question.audience"),
                view.text("bank.audience." + question.audience().id())));
        facts.add(new Fact(
                view.text("bank.page.filter.kind"),
                view.text("bank.kind." + question.question().kind().id())));
        facts.add(new Fact(
                view.text("bank.question.point"),
                question.findPoint()
                        .map(point -> view.text("bank.point." + point))
                        .orElse(view.text("bank.question.not-critical"))));
        return facts;
    }

    private static Reading reading(Question question, Words words) {
        return new Reading(
                words.language().tag(),
                words.say("bank.language"),
                words.say(key(question, "ask")),
                options(question, words),
                words.say(key(question, "why")));
    }

    private static List<Option> options(Question question, Words words) {
        if (question.kind() == QuestionKind.PUT_IN_ORDER) {
            return IntStream.range(0, question.right().size())
                    .mapToObj(i -> new Option(
                            (i + 1) + "  " + option(question, question.right().get(i), words), true))
                    .toList();
        }
        List<String> shown = question.kind() == QuestionKind.MATCH ? question.right() : question.options();
        return shown.stream()
                .map(option -> new Option(
                        option(question, option, words), question.right().contains(option)))
                .toList();
    }

    private static String option(Question question, String option, Words words) {
        return String.join(
                " → ",
                Match.parts(option).stream()
                        .map(part -> words.say(key(question, "option." + part)))
                        .toList());
    }

    private static String key(Question question, String part) {
        return "lockout.question." + question.id() + "." + part;
    }

    private List<Lever> levers(BankQuestion question) {
        List<Lever> levers = new ArrayList<>();
        if (question.question().source().mark().needsConfirmation()) {
            levers.add(lever(question, Switch.CONFIRMED));
        }
        levers.add(lever(question, Switch.RETIRED));
        return levers;
    }

    private Lever lever(BankQuestion question, Switch which) {
        boolean on = QuestionControl.isOn(pages.switches(), which, question.id());
        String key = "bank.switch." + which.id() + (on ? ".off" : ".on");
        return new Lever(
                which.id(), on, pages.view().text(key), pages.view().text("bank.switch." + which.id() + ".hint"));
    }

    private Setting setting(SetAt setting) {
        String key = "bank.set." + setting.which().id() + (setting.on() ? ".on" : ".off");
        return new Setting(pages.view().text(key, "person", setting.person(), "time", setting.at()), setting.record());
    }
}
