package beltmark.review;

import beltmark.texts.Words;

/** Names questions in one person's language; one of an earlier version that has no name any more keeps its id. */
record QuestionNames(Words words) {

    String name(String question) {
        String key = "lockout.question." + question + ".name";
        return words.has(key) ? words.say(key) : question;
    }
}
