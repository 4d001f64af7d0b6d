package beltmark.core.mastery;

import java.util.List;

/**
 * When a skill is due again: gaps of 7, 14, 28, 56 and 91 days; right is one step up, wrong two down. A choice for 10 to 30
 * minutes of practice a week after published work on spacing (Cepeda et al. 2008; Kang et al. 2014; abstracts seen).
 */
public final class Ladder {

    /** The level of a skill that was never right. */
    public static final int START = -1;

    private static final List<Integer> GAPS = List.of(7, 14, 28, 56, 91);
    private static final int DOWN = 2;
    private static final double RECALL_AT_DUE = 0.8;

    private Ladder() {}

    /** {@return the level after an answer, 0 to 4} */
    public static int after(int level, boolean right) {
        return right ? Math.min(level + 1, GAPS.size() - 1) : Math.max(level - DOWN, 0);
    }

    /** {@return the days until a skill at that level is due again} */
    public static int gapDays(int level) {
        return GAPS.get(Math.max(level, 0));
    }

    /** {@return the chance of still being right after some days: 2^(-t/h), where h makes it 0.8 on the due day} */
    public static double recall(int level, long days) {
        return Math.pow(RECALL_AT_DUE, days / (double) gapDays(level));
    }

    /** {@return the days after which that chance is one half} */
    public static double halfLifeDays(int level) {
        return gapDays(level) / (-Math.log(RECALL_AT_DUE) / Math.log(2));
    }
}
