package beltmark.people;

import beltmark.core.units.Graduation;
import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.texts.Language;
import beltmark.web.Option;
import beltmark.web.Page;
import beltmark.web.View;
import beltmark.web.Visitor;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * A person's own settings.
 *
 * @param view what all pages share
 * @param visitor whose they are
 * @param languages the languages that can be chosen
 * @param stored what was stored just now: {@code settings}, {@code pin} or empty
 * @param unknown names of the choices that were sent as something that is not offered
 * @param fault word of what is wrong with a chosen PIN, empty when nothing is
 * @param refused key of the sentence on the present PIN, null when there is nothing to say
 */
public record SettingsPage(
        View view,
        Visitor visitor,
        Set<Language> languages,
        String stored,
        Set<String> unknown,
        String fault,
        @Nullable String refused)
        implements Page {

    /** The graduations of the tapes in use. */
    public static final List<Graduation> GRADUATIONS =
            List.of(Graduation.SIXTEENTH_INCH, Graduation.THIRTY_SECOND_INCH, Graduation.MILLIMETRE);

    private static final Length EXAMPLE = Length.ofSixteenths(76);

    /** {@return a graduation as it is written in forms, files and text keys} */
    public static String word(Graduation graduation) {
        return graduation.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@return the ways to show lengths, each with an example} */
    public List<Option> graduations() {
        return GRADUATIONS.stream()
                .map(graduation -> new Option(
                        word(graduation),
                        view.text(
                                "people.graduation." + word(graduation),
                                "example",
                                LengthPrinter.print(EXAMPLE, graduation))))
                .toList();
    }

    /** {@return the present way to show lengths} */
    public String graduation() {
        return word(visitor.graduation());
    }

    /** {@return the languages, each by its own name} */
    public List<Option> languageOptions() {
        return languages.stream()
                .map(language -> new Option(language.tag(), language.ownName()))
                .toList();
    }

    /** {@return the sentence on a choice, null when there is nothing to say} */
    public @Nullable String unknownText(String name) {
        return unknown.contains(name) ? view.text("people.settings.unknown") : null;
    }

    /** {@return the sentence on the chosen PIN, null when there is nothing to say} */
    public @Nullable String faultText() {
        return fault.isEmpty() ? null : view.text("people.pin-fault." + fault);
    }

    /** {@return the sentence on the present PIN, null when there is nothing to say} */
    public @Nullable String refusedText() {
        return refused == null ? null : view.text(refused);
    }
}
