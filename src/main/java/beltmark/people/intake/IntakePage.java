package beltmark.people.intake;

import beltmark.core.units.Graduation;
import beltmark.people.SettingsPage;
import beltmark.texts.Language;
import beltmark.web.Page;
import beltmark.web.Role;
import beltmark.web.View;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * Where a roster is handed in.
 *
 * @param view what all pages share
 * @param languages the languages there are
 * @param typed the rows as they were handed in before
 * @param error why they could not be read, null when nothing was handed in
 */
public record IntakePage(
        View view,
        Set<Language> languages,
        String typed,
        @Nullable String error) implements Page {

    public IntakePage {
        languages = Set.copyOf(languages);
    }

    /** {@return the first row and two more, as they may be written} */
    public String example() {
        String header = Arrays.stream(RosterColumn.values())
                .map(column -> view.text("intake.column." + column.word()))
                .collect(Collectors.joining(","));
        return header
                + "\nAna Beltrán,Night crew,new-hire,es,mm,2026-03-01\nTomasz Wilk,Night crew,\"supervisor, trainer\",,,";
    }

    /** {@return the columns, each with what belongs into it} */
    public List<String> columns() {
        return Arrays.stream(RosterColumn.values())
                .map(column -> view.text(
                        "intake.about." + column.word(),
                        "column",
                        view.text("intake.column." + column.word()),
                        "choices",
                        choices(column)))
                .toList();
    }

    private String choices(RosterColumn column) {
        return switch (column) {
            case ROLES -> Role.ofPeople().stream().map(Role::word).collect(Collectors.joining(", "));
            case LANGUAGE -> languages.stream().map(Language::tag).sorted().collect(Collectors.joining(", "));
            case LENGTHS ->
                SettingsPage.GRADUATIONS.stream().map(IntakePage::word).collect(Collectors.joining(", "));
            case NAME, CREW, SINCE -> "";
        };
    }

    private static String word(Graduation graduation) {
        return SettingsPage.word(graduation);
    }
}
