package beltmark.board;

import beltmark.core.units.Length;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that counts or could have: a problem, a sitting or a demonstration, with the records behind it.
 *
 * @param title which: a problem code, a result, a conveyor
 * @param good whether it was clean, passed or signed
 * @param records the records, in order
 */
public record Evidence(Title title, boolean good, List<Entry> records) {

    public Evidence {
        records = List.copyOf(records);
    }

    /**
     * What names it.
     *
     * @param what a code, or a conveyor
     * @param card the id of the hardware card, empty for a quiz
     * @param right how many answers were right, for a quiz
     * @param asked how many were asked, for a quiz
     */
    public record Title(String what, String card, int right, int asked) {}

    /**
     * One record of the book.
     *
     * @param number its number
     * @param actor the name of who did it
     * @param happenedAt when it happened
     * @param recordedAt when it was recorded
     * @param hash the beginning of its hash
     * @param about what it is about: a part, a question, or what was signed
     * @param verdict how it was judged; empty when it was not
     * @param figures what was typed, picked or measured
     */
    public record Entry(
            long number,
            String actor,
            Instant happenedAt,
            Instant recordedAt,
            String hash,
            String about,
            String verdict,
            List<Figure> figures) {

        public Entry {
            figures = List.copyOf(figures);
        }
    }

    /**
     * One thing typed, picked or measured.
     *
     * @param what a blank, or a measure and side; empty for the option of a question
     * @param typed as typed or picked
     * @param length as read, if it is a length
     * @param wanted what the card asked for, for a measure
     * @param slip the id of the slip behind a wrong answer, or null
     */
    public record Figure(
            String what,
            String typed,
            @Nullable Length length,
            @Nullable Length wanted,
            @Nullable String slip) {}
}
