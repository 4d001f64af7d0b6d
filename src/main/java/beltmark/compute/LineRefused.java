package beltmark.compute;

import java.util.LinkedHashMap;
import java.util.Map;

/** Carries a {@link LineFault} out of the reading of a line. */
final class LineRefused extends RuntimeException {

    private final LineFault fault;
    private final transient Map<String, Object> values = new LinkedHashMap<>();

    LineRefused(LineFault fault) {
        super(fault.name(), null, false, false);
        this.fault = fault;
    }

    /** Names a value of the sentence; {@code field} is also told beside it. */
    LineRefused with(String name, Object value) {
        values.put(name, value);
        return this;
    }

    LineFault fault() {
        return fault;
    }

    Map<String, Object> values() {
        return values;
    }
}
