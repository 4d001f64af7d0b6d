package beltmark.core.mastery;

/** How often the rule "n right in a row" declares mastery of somebody who is right with a constant chance. */
public final class MasteryRule {

    private MasteryRule() {}

    /**
     * The exact chance that a run of that many right answers occurs (a Markov chain over the length of the present run).
     *
     * @param chance of a right answer, 0..1
     * @param inARow the length of the run, at least 1
     * @param answers how many answers there are, 0 or more
     * @return the chance that the rule is met at the last answer or before
     */
    public static double declares(double chance, int inARow, int answers) {
        double[] run = new double[inARow + 1];
        run[0] = 1;
        for (int i = 0; i < answers; i++) {
            double[] next = new double[inARow + 1];
            next[inARow] = run[inARow];
            for (int length = 0; length < inARow; length++) {
                next[length + 1] += run[length] * chance;
                next[0] += run[length] * (1 - chance);
            }
            run = next;
        }
        return run[inARow];
    }
}
