package beltmark.cli;

import beltmark.texts.Words;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/** Carries a {@link GradeFault} out of the reading of answers. */
final class GradeRefused extends RuntimeException {

    private static final long serialVersionUID = 1;
    private static final int LONGEST_ECHO = 60;

    private final GradeFault fault;
    private final transient Map<String, Object> values = new LinkedHashMap<>();

    GradeRefused(GradeFault fault) {
        super(fault.name(), null, false, false);
        this.fault = fault;
    }

    /** Refuses a name that was typed, beside those that are known. */
    static GradeRefused unknown(GradeFault fault, String typed, Collection<String> known) {
        return new GradeRefused(fault).typed(typed).with("known", String.join(", ", known));
    }

    /** Repeats what was typed, as far as one can take it in. */
    GradeRefused typed(String text) {
        return with("typed", text.length() > LONGEST_ECHO ? text.substring(0, LONGEST_ECHO) + "…" : text);
    }

    GradeRefused with(String name, Object value) {
        values.put(name, value);
        return this;
    }

    GradeFault fault() {
        return fault;
    }

    String sentence(Words words) {
        return words.say(fault.key(), values);
    }
}
