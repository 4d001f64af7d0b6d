package beltmark.drawing;

import java.util.ArrayList;
import java.util.List;

/** Finds places along a line where a text touches nothing. */
final class Clear {

    private static final double MARGIN = 0.7;
    private static final double STEP = 0.25;

    private final double from;
    private final double to;
    private final List<Stretch> taken = new ArrayList<>();

    private record Stretch(double from, double to) {}

    Clear(double from, double to) {
        this.from = from;
        this.to = to;
    }

    void block(double start, double end) {
        taken.add(new Stretch(start, end));
    }

    /** {@return the middle of the free place nearest to the wished one, now taken; the wished one when all is full} */
    double place(double wished, double size) {
        double middle = wished;
        for (double away = 0; away < to - from; away += STEP) {
            if (isFree(wished - away, size)) {
                middle = wished - away;
                break;
            }
            if (isFree(wished + away, size)) {
                middle = wished + away;
                break;
            }
        }
        block(middle - size / 2, middle + size / 2);
        return middle;
    }

    private boolean isFree(double middle, double size) {
        double start = middle - size / 2;
        double end = middle + size / 2;
        return start >= from
                && end <= to
                && taken.stream().noneMatch(other -> other.from < end + MARGIN && other.to > start - MARGIN);
    }
}
