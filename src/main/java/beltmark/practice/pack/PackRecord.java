package beltmark.practice.pack;

import java.util.List;

/**
 * The body of a {@code practice.pack}: the sheets that were made.
 *
 * @param sheets one for each person
 */
public record PackRecord(List<SheetRecord> sheets) {

    public PackRecord {
        sheets = List.copyOf(sheets);
    }

    /**
     * One sheet.
     *
     * @param person the person's number
     * @param problems what is on it, in order
     */
    public record SheetRecord(long person, List<Asked> problems) {}

    /**
     * A problem by its name.
     *
     * @param family the family's id
     * @param version the family's version
     * @param code the code it was drawn from
     */
    public record Asked(String family, int version, String code) {}
}
