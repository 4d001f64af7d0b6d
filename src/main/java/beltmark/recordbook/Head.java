package beltmark.recordbook;

import java.time.Instant;

/**
 * The end of the book. Its hash stands for every record before it: whoever noted it down can tell later whether any of
 * them was changed.
 *
 * @param sequence the number of the last record, which is also the count of records; 0 when there is none
 * @param hash its hash
 * @param recordedAt when it was stored
 */
public record Head(long sequence, Hash hash, Instant recordedAt) {

    /** The head of a book without records. */
    static final Head OF_EMPTY_BOOK = new Head(0, Hash.NONE, Instant.EPOCH);

    /** {@return number and hash in one word, to be noted down} */
    public String toWord() {
        return sequence + ":" + hash.hex();
    }
}
