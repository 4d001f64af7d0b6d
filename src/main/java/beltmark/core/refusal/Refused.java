package beltmark.core.refusal;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Thrown for input that no set-up can have. It is not a failure of the program: whoever asks for a result answers it with
 * the sentence of its {@link Refusal}. It has no stack trace, because the name says all there is to say.
 */
public final class Refused extends IllegalArgumentException {

    private final Refusal refusal;
    private final transient Map<String, Object> values;

    private Refused(Refusal refusal, Map<String, Object> values) {
        this.refusal = refusal;
        this.values = values;
    }

    /** {@return a refusal without values} */
    public static Refused because(Refusal refusal) {
        return new Refused(refusal, Map.of());
    }

    /** {@return this with one more named value for the sentence; a number, a text or a quantity} */
    public Refused with(String name, Object value) {
        Map<String, Object> more = new LinkedHashMap<>(values);
        more.put(name, value);
        return new Refused(refusal, more);
    }

    /** {@return why} */
    public Refusal refusal() {
        return refusal;
    }

    /** {@return the values that the sentence names, in reading order} */
    public Map<String, Object> values() {
        return Collections.unmodifiableMap(values);
    }

    @Override
    public String getMessage() {
        return refusal + " " + values;
    }

    @Override
    public synchronized Throwable fillInStackTrace() {
        return this;
    }
}
