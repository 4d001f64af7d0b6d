package beltmark.web;

/**
 * Names one sending of a form. A form is rendered with a fresh one, so that sending it twice makes one record.
 *
 * @param value 22 letters, digits, hyphens or underscores: 128 random bits
 */
public record OperationId(String value) {

    /** Name of the hidden form field. */
    public static final String FIELD = "operation";

    private static final int BYTES = 16;

    public OperationId {
        if (!isValid(value)) {
            throw new IllegalArgumentException("not an operation id: " + value.length() + " characters");
        }
    }

    /** {@return a new one} */
    public static OperationId fresh() {
        return new OperationId(RandomToken.ofBytes(BYTES));
    }

    static boolean isValid(String value) {
        return value.matches("[A-Za-z0-9_-]{22}");
    }
}
