package beltmark.review;

import beltmark.core.lockout.Match;
import beltmark.texts.Words;
import java.util.stream.Collectors;

/** Names questions in one person's language; one of an earlier version that has no name any more keeps its id. */
record QuestionNames(Words words) {

    String name(String question) {
        String key = "lockout.question." + question + ".name";
        return words.has(key) ? words.say(key) : question;
    }

    /** {@return the text of an option; of a pair its row and its target; the id where there is no text any more} */
    String option(String question, String option) {
        return Match.parts(option).stream()
                .map(part -> {
                    String key = "lockout.question." + question + ".option." + part;
                    return words.has(key) ? words.say(key) : part;
                })
                .collect(Collectors.joining(" → "));
    }
}
