package beltmark.compute;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** The names that the fields of one quantity may be given by. */
final class FieldNames {

    private final List<Field> fields;
    private final Map<String, Named> byName = new LinkedHashMap<>();

    FieldNames(Calculation<?> calculation) {
        this.fields = calculation.fields();
        for (Field field : fields) {
            put(calculation, field, field.name());
        }
        for (Field field : fields) {
            field.aliases().forEach(alias -> put(calculation, field, alias));
        }
    }

    /** A field in the unit that ends the name it was given by. */
    record Named(Field field, Kind.Unit unit) {}

    private void put(Calculation<?> calculation, Field field, String name) {
        for (Kind.Unit unit : field.kind().units()) {
            String whole = Field.named(name, unit);
            if (byName.put(whole.toLowerCase(Locale.ROOT), new Named(field, unit)) != null) {
                throw new IllegalStateException(calculation.name() + " has two fields " + whole);
            }
        }
    }

    Optional<Named> find(String name) {
        return Optional.ofNullable(byName.get(name.toLowerCase(Locale.ROOT)));
    }

    List<Field> required() {
        return fields.stream().filter(Field::required).toList();
    }

    /** {@return the field of a name without unit, its own or another, when there is one} */
    Optional<Field> field(String name) {
        return fields.stream()
                .filter(field -> field.name().equals(name))
                .findFirst()
                .or(() -> fields.stream()
                        .filter(field -> field.aliases().contains(name))
                        .findFirst());
    }

    /** {@return all fields as they are usually named, those that may be left out in square brackets} */
    String expected() {
        return fields.stream()
                .map(field -> field.required() ? field.usualName() : "[" + field.usualName() + "]")
                .collect(Collectors.joining(", "));
    }
}
