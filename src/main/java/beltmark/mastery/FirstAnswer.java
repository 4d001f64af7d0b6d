package beltmark.mastery;

import java.util.List;

/**
 * A first answer to a part, as far as habits are concerned.
 *
 * @param person the person's number
 * @param family the family's id
 * @param part the part's id
 * @param right whether all of it was right
 * @param slips the ids of the slips that were named
 */
public record FirstAnswer(long person, String family, String part, boolean right, List<String> slips) {

    public FirstAnswer {
        slips = List.copyOf(slips);
    }
}
