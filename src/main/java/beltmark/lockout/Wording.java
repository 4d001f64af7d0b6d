package beltmark.lockout;

import beltmark.core.lockout.Question;
import beltmark.texts.Words;
import java.util.List;

/** The texts of the questions in one person's language. */
public record Wording(Words words) {

    private static final String TOPIC = "lockout.";

    /** {@return a few words that name the question once it is answered} */
    String name(String question) {
        return words.say(TOPIC + "question." + question + ".name");
    }

    String ask(Question question) {
        return of(question, "ask");
    }

    String why(Question question) {
        return of(question, "why");
    }

    String option(Question question, String option) {
        return of(question, "option." + option);
    }

    /** {@return the rule sets under which the answer is true} */
    List<String> ruleSets(Question question) {
        return question.source().ruleSets().stream()
                .map(rules -> words.say(TOPIC + "rules." + rules))
                .toList();
    }

    private String of(Question question, String part) {
        return words.say(TOPIC + "question." + question.id() + "." + part);
    }
}
