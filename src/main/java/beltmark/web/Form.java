package beltmark.web;

import io.javalin.http.BadRequestResponse;
import io.javalin.http.Context;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;

/**
 * The fields of a sent form as text. A missing field is an empty text; control characters are dropped, because no field
 * of ours has any and they do harm in logs and exports.
 */
public final class Form {

    private static final int LONGEST_WHOLE_NUMBER = 18;

    private final Map<String, List<String>> fields;

    private Form(Map<String, List<String>> fields) {
        this.fields = fields;
    }

    /** {@return the form of a request, at most as large as any request may be} */
    public static Form of(Context ctx) {
        return new Form(ctx.formParamMap());
    }

    /** {@return what an address carries behind its question mark, read like the fields of a form} */
    public static Form ofAddress(Context ctx) {
        return new Form(ctx.queryParamMap());
    }

    /** {@return the text of a field without blanks around it, empty when missing} */
    public String text(String name) {
        List<String> values = all(name);
        return values.isEmpty() ? "" : values.get(0);
    }

    /** {@return the texts of all fields of that name, such as ticked boxes, in the order sent} */
    public List<String> all(String name) {
        return fields.getOrDefault(name, List.of()).stream().map(Form::cleaned).toList();
    }

    /** {@return whether the field was sent, even if empty} */
    public boolean has(String name) {
        return fields.containsKey(name);
    }

    /** {@return a field as a whole number from 0, empty when it is none} */
    public OptionalLong number(String name) {
        return wholeNumber(text(name));
    }

    /** {@return the operation id that every recording form sends; without one the request is refused} */
    public OperationId operation() {
        String value = text(OperationId.FIELD);
        if (!OperationId.isValid(value)) {
            throw new BadRequestResponse("no operation id");
        }
        return new OperationId(value);
    }

    /** {@return a number in the path of a request; anything else is an address that does not exist} */
    public static long pathNumber(Context ctx, String name) {
        String typed = ctx.pathParam(name);
        return wholeNumber(typed).orElseThrow(() -> new NotFound(name + " is not a number"));
    }

    private static OptionalLong wholeNumber(String text) {
        return !text.isEmpty()
                        && text.length() <= LONGEST_WHOLE_NUMBER
                        && text.chars().allMatch(c -> c >= '0' && c <= '9')
                ? OptionalLong.of(Long.parseLong(text))
                : OptionalLong.empty();
    }

    Map<String, List<String>> fields() {
        return fields;
    }

    private static String cleaned(String value) {
        StringBuilder kept = new StringBuilder(value.length());
        value.codePoints()
                .filter(c -> !Character.isISOControl(c) || c == '\n' || c == '\t')
                .forEach(kept::appendCodePoint);
        return kept.toString().strip();
    }
}
