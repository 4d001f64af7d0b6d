package beltmark.signoff;

import beltmark.web.OperationId;
import beltmark.web.Option;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The sign-off form as it is shown, with what was typed and what is wrong with it.
 *
 * @param action where it is sent
 * @param operation names this sign-off from its first page to its record
 * @param blade the blades of the card's chart
 * @param orientation which way round
 * @param on the days it may have been
 * @param conveyor where
 * @param suggestions conveyors to pick from
 * @param measures what is measured, left and right
 * @param observations what must have been seen
 */
public record EntryForm(
        String action,
        OperationId operation,
        Choice blade,
        Choice orientation,
        Choice on,
        Field conveyor,
        List<String> suggestions,
        List<Pair> measures,
        List<Observation> observations) {

    public EntryForm {
        suggestions = List.copyOf(suggestions);
        measures = List.copyOf(measures);
        observations = List.copyOf(observations);
    }

    /**
     * A field to be typed.
     *
     * @param name its name
     * @param value what was typed
     * @param error what is wrong with it, or null
     */
    public record Field(String name, String value, @Nullable String error) {}

    /**
     * A field to be picked.
     *
     * @param field which
     * @param options from what
     */
    public record Choice(Field field, List<Option> options) {
        public Choice {
            options = List.copyOf(options);
        }
    }

    /**
     * A measure on both sides.
     *
     * @param id the id of the measure
     * @param left on the left
     * @param right on the right
     */
    public record Pair(String id, Field left, Field right) {}

    /**
     * Something to be ticked.
     *
     * @param id its id
     * @param ticked whether it is
     * @param error why it must be, or null
     */
    public record Observation(
            String id, boolean ticked, @Nullable String error) {}

    /** {@return whether anything is wrong} */
    public boolean hasErrors() {
        return errors() > 0;
    }

    /** {@return how many fields and observations something is wrong with} */
    public long errors() {
        long fields = measures.stream()
                .flatMap(pair -> List.of(pair.left(), pair.right()).stream())
                .filter(field -> field.error() != null)
                .count();
        long choices = List.of(blade.field(), orientation.field(), on.field(), conveyor).stream()
                .filter(field -> field.error() != null)
                .count();
        return fields
                + choices
                + observations.stream().filter(one -> one.error() != null).count();
    }
}
