package beltmark.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * A field that was typed and not stored, shown again so that nobody has to remember it.
 *
 * @param name name of the field
 * @param value what was typed
 */
public record Typed(String name, String value) {

    private static final Set<String> MACHINERY = Set.of(FormTokens.FIELD, OperationId.FIELD, "next");

    /** {@return what people typed into a form; never a PIN} */
    static List<Typed> of(Form form) {
        List<Typed> typed = new ArrayList<>();
        for (String name : form.fields().keySet()) {
            boolean secret = name.toLowerCase(Locale.ROOT).contains("pin");
            if (!secret && !MACHINERY.contains(name)) {
                form.all(name).stream()
                        .filter(value -> !value.isEmpty())
                        .forEach(value -> typed.add(new Typed(name, value)));
            }
        }
        return List.copyOf(typed);
    }
}
