package beltmark.signoff;

import beltmark.web.OperationId;
import beltmark.web.Option;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The sign-off form as it is shown, with what was typed and what is wrong with it.
 *
 * @param action where it is sent
 * @param operation names this sign-off from its first page to its record
 * @param enteredAt when it was filled in, by the clock of the device, as that said it
 * @param picked the blade, which way round, the day, the bounce test, and whether the assessor trained the person
 * @param conveyor where
 * @param suggestions conveyors to pick from
 * @param measures what is measured, left and right
 * @param finish what is read at the blade
 * @param observations what is watched for
 * @param explanations what is beyond its tolerance, to be explained
 */
public record EntryForm(
        String action,
        OperationId operation,
        String enteredAt,
        Picked picked,
        Field conveyor,
        List<String> suggestions,
        List<Pair> measures,
        Finish finish,
        List<Observation> observations,
        List<Explanation> explanations) {

    public EntryForm {
        suggestions = List.copyOf(suggestions);
        measures = List.copyOf(measures);
        observations = List.copyOf(observations);
        explanations = List.copyOf(explanations);
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
     * What is picked, beside the observations.
     *
     * @param blade the blades of the card's chart
     * @param orientation which way round
     * @param on the days it may have been
     * @param bounce what came of the bounce test
     * @param trained whether the assessor trained the person
     */
    public record Picked(Choice blade, Choice orientation, Choice on, Choice bounce, Choice trained) {}

    /**
     * A measure on both sides.
     *
     * @param id the id of the measure
     * @param left on the left
     * @param right on the right
     */
    public record Pair(String id, Field left, Field right) {}

    /**
     * What is read at the blade and typed.
     *
     * @param edges from the ends of the blade to the edges of the belt
     * @param angle of the blade
     * @param splice the tallest one
     */
    public record Finish(Pair edges, Field angle, Field splice) {}

    /**
     * Something that is watched for.
     *
     * @param id its id
     * @param critical whether it is critical
     * @param choice what is said of it
     */
    public record Observation(String id, boolean critical, Choice choice) {}

    /**
     * Something beyond its tolerance.
     *
     * @param title what it is, in words
     * @param field where it is explained
     */
    public record Explanation(String title, Field field) {}

    /** {@return whether anything is wrong} */
    public boolean hasErrors() {
        return errors() > 0;
    }

    /** {@return how many fields and observations something is wrong with} */
    public long errors() {
        return fields().filter(field -> field.error() != null).count();
    }

    private Stream<Field> fields() {
        Stream<Field> typed = Stream.of(conveyor, finish.angle(), finish.splice());
        Stream<Field> pairs = Stream.concat(measures.stream(), Stream.of(finish.edges()))
                .flatMap(pair -> Stream.of(pair.left(), pair.right()));
        Stream<Field> choices = Stream.of(
                        picked.blade(), picked.orientation(), picked.on(), picked.bounce(), picked.trained())
                .map(Choice::field);
        Stream<Field> seen = observations.stream().map(one -> one.choice().field());
        return Stream.of(typed, pairs, choices, seen, explanations.stream().map(Explanation::field))
                .flatMap(some -> some);
    }
}
