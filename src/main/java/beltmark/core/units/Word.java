package beltmark.core.units;

/**
 * A value that is a word and not a number, such as which way round a tensioner goes; it is translated where it is shown.
 *
 * @param key the key of the word in the text files
 */
public record Word(String key) implements Quantity {

    @Override
    public double amount() {
        return Double.NaN;
    }

    @Override
    public String unit() {
        return "";
    }
}
