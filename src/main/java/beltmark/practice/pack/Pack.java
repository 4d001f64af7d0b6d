package beltmark.practice.pack;

import java.time.Instant;
import java.util.List;

/**
 * A pack that was made.
 *
 * @param seq its number: that of its record
 * @param madeAt when
 * @param sheets one for each person
 */
public record Pack(long seq, Instant madeAt, List<Sheet> sheets) {

    public Pack {
        sheets = List.copyOf(sheets);
    }

    /**
     * One sheet.
     *
     * @param person whose it is
     * @param problems what is on it, in order
     * @param entered whether its answers were typed in
     */
    public record Sheet(Receiver person, List<PackRecord.Asked> problems, boolean entered) {}
}
