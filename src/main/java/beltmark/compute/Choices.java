package beltmark.compute;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/** The words for the values of an enum. */
final class Choices {

    private Choices() {}

    static <E> List<String> ids(E[] values, Function<E, String> id) {
        return Stream.of(values).map(id).toList();
    }

    /** The value of a word that was read as one of {@link #ids}. */
    static <E> E get(E[] values, Function<E, String> id, String word) {
        return Stream.of(values)
                .filter(value -> id.apply(value).equals(word))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no choice " + word));
    }
}
