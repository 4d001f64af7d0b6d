package beltmark.people.intake;

import beltmark.people.intake.Preview.Fate;
import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * What a roster would change, before anything is stored.
 *
 * @param view what all pages share
 * @param preview the rows and what becomes of each
 * @param roster the rows as they were handed in, sent along with the word to store them
 * @param operation names the storing
 */
public record PreviewPage(View view, Preview preview, String roster, OperationId operation) implements Page {

    /** {@return what would be stored, or why nothing can be, in one sentence} */
    public String summary() {
        int faulty = preview.count(Fate.FAULTY);
        if (faulty > 0) {
            return view.text("intake.preview.faulty", "count", faulty);
        }
        return preview.isStorable()
                ? view.text("intake.preview.storable", "count", preview.count(Fate.NEW))
                : view.text("intake.preview.nothing");
    }

    /** {@return the crews that would be new, null when there are none} */
    public @Nullable String newCrews() {
        return preview.newCrews().isEmpty()
                ? null
                : view.text("intake.preview.new-crews", "crews", String.join(", ", preview.newCrews()));
    }

    /** {@return what becomes of a row, in a word} */
    public String fate(Preview.Line line) {
        return view.text("intake.fate." + line.fate().word());
    }

    /** {@return what there is to say about a row, sentence by sentence} */
    public List<String> remarks(Preview.Line line) {
        if (!line.otherCrew().isEmpty()) {
            return List.of(view.text("intake.preview.same-name", "crew", line.otherCrew()));
        }
        return line.row().faults().stream()
                .map(fault -> view.text("intake.fault." + fault.kind().word(), "value", fault.value()))
                .toList();
    }

    /** {@return roles, language and lengths of a row} */
    public String about(Preview.Line line) {
        String roles = line.row().newcomer().roles().stream()
                .sorted()
                .map(role -> view.text("people.role." + role.word()))
                .collect(Collectors.joining(", "));
        String language = line.row().newcomer().language().ownName();
        return Stream.of(roles, language, view.words().day(line.row().since()))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" · "));
    }
}
