package beltmark.preview;

import beltmark.content.Content;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.units.Graduation;
import beltmark.problem.ProblemWords;
import beltmark.texts.Language;
import beltmark.texts.Words;
import beltmark.web.Option;
import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;

/**
 * What can be chosen for a preview.
 *
 * @param content where families and cards are
 * @param spoken the languages there are
 * @param words the trainer's own words
 */
record Choices(Content content, Collection<Language> spoken, Words words) {

    List<Option> families() {
        return content.families().stream()
                .map(ProblemFamily::id)
                .map(id -> new Option(id, new ProblemWords(words).title(id)))
                .toList();
    }

    List<Option> cards() {
        return Stream.concat(
                        Stream.of(new Option("", words.say("preview.any-card"))),
                        content.cards().stream()
                                .map(card -> new Option(card.id(), words.say("hardware.name." + card.id()))))
                .toList();
    }

    List<Option> languages() {
        return spoken.stream()
                .map(language -> new Option(language.tag(), language.ownName()))
                .toList();
    }

    List<Option> graduations() {
        return Stream.of(Graduation.values())
                .map(graduation -> new Option(
                        graduation.name(),
                        graduation.unit().symbol() + (graduation.perUnit() == 1 ? "" : " 1/" + graduation.perUnit())))
                .toList();
    }
}
