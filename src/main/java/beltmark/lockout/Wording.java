package beltmark.lockout;

import beltmark.core.lockout.Match;
import beltmark.core.lockout.Question;
import beltmark.core.lockout.QuestionKind;
import beltmark.core.lockout.Told;
import beltmark.texts.Words;
import java.util.List;
import java.util.Map;

/** The texts of the questions in one person's language. */
public record Wording(Words words) {

    private static final String TOPIC = "lockout.";
    private static final String PAIRED = " → ";

    /** {@return a few words that name the question once it is answered} */
    String name(Question question) {
        return of(question, "name");
    }

    String ask(Question question) {
        return of(question, "ask");
    }

    String why(Question question) {
        return of(question, "why");
    }

    /** {@return the text of an option; of a pair its row and its target} */
    String option(Question question, String option) {
        if (question.kind() != QuestionKind.MATCH) {
            return of(question, "option." + option);
        }
        List<String> pair = Match.parts(option);
        return part(question, pair.get(0)) + PAIRED + part(question, pair.get(1));
    }

    /** {@return the text of a row or a target of a match} */
    String part(Question question, String part) {
        return of(question, "option." + part);
    }

    /** {@return the heading of a column of a match, counted from 1} */
    String column(Question question, int column) {
        return of(question, "column." + column);
    }

    /** {@return whether the answer rests on a paragraph or is good practice} */
    String basis(Question question) {
        return words.say(TOPIC + "basis." + question.source().basis().id());
    }

    /** {@return the rule sets under which the answer is true} */
    List<String> ruleSets(Question question) {
        return question.source().ruleSets().stream()
                .map(rules -> words.say(TOPIC + "rules." + rules))
                .toList();
    }

    private String of(Question question, String part) {
        Told told = question.told();
        if (told == null) {
            return words.say(TOPIC + "question." + question.id() + "." + part);
        }
        return told.find(part.replaceFirst("^option\\.", ""))
                .orElseGet(() -> words.say(
                        TOPIC + "procedure." + (part.startsWith("option.") ? part : told.form() + "." + part),
                        Map.of("machine", told.machine(), "version", told.version())));
    }
}
