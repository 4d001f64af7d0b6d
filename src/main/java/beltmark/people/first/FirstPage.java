package beltmark.people.first;

import beltmark.core.units.Length;
import beltmark.core.units.LengthPrinter;
import beltmark.people.SettingsPage;
import beltmark.web.Option;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The first page of an empty site.
 *
 * @param view what all pages share
 * @param crew what was typed as the crew
 * @param name what was typed as the name
 * @param graduation the word of how lengths are to be shown
 * @param faults the key of a sentence by the name of its field
 */
public record FirstPage(View view, String crew, String name, String graduation, Map<String, String> faults)
        implements Page {

    private static final Length EXAMPLE = Length.ofSixteenths(76);

    public FirstPage {
        faults = Map.copyOf(faults);
    }

    /** {@return what is wrong with a field, null when nothing is} */
    public @Nullable String error(String field) {
        String key = faults.get(field);
        return key == null ? null : view.text(key);
    }

    /** {@return the ways to show lengths, each with an example} */
    public List<Option> graduations() {
        return SettingsPage.GRADUATIONS.stream()
                .map(graduation -> new Option(
                        SettingsPage.word(graduation),
                        view.text(
                                "people.graduation." + SettingsPage.word(graduation),
                                "example",
                                LengthPrinter.print(EXAMPLE, graduation))))
                .toList();
    }
}
