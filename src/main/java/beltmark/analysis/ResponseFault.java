package beltmark.analysis;

import java.util.Locale;
import java.util.Map;

/** A table of answers that cannot be read; the first thing that is wrong with it, as a person can find it in the file. */
public final class ResponseFault extends RuntimeException {

    private static final long serialVersionUID = 1L;

    /** What is wrong. */
    public enum Kind {
        /** No line has anything in it. */
        EMPTY,
        /** There is a header and no row under it. */
        NO_ROWS,
        /** No column is left for items. */
        NO_ITEMS,
        /** More columns than a test has items. */
        TOO_WIDE,
        /** A row has more or fewer cells than the first. */
        RAGGED,
        /** A cell is something else than 0, 1 or blank. */
        NO_RESPONSE,
        /** A quotation mark is not closed. */
        QUOTES;

        /** {@return the name in text keys} */
        public String id() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }
    }

    private final Kind kind;
    private final transient Map<String, Object> values;

    ResponseFault(Kind kind, Map<String, Object> values) {
        super(kind + " " + values);
        this.kind = kind;
        this.values = Map.copyOf(values);
    }

    /** {@return what is wrong} */
    public Kind kind() {
        return kind;
    }

    /** {@return where, by the names that the sentence of the kind has in braces} */
    public Map<String, Object> values() {
        return values;
    }
}
