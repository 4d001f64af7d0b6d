package beltmark.core.mastery;

/**
 * Bayesian knowledge tracing (Corbett and Anderson 1995; formulas as given in assessment summaries, seen second-hand). The
 * chance that somebody knows a skill is L; who knows it still slips with S, who does not still guesses with G, and every
 * problem teaches with T. Used for order, never as the gate alone.
 *
 * @param known the chance L before the first answer, 0..1
 * @param learns the chance T to learn from one problem, 0..1
 * @param slips the chance S of a wrong answer from somebody who knows, 0.01..1
 * @param guesses the chance G of a right answer from somebody who does not, 0.01..1; with S below 1 in sum, because
 *     otherwise a right answer would lower L
 */
public record KnowledgeTracing(double known, double learns, double slips, double guesses) {

    private static final double LEAST = 1e-6;
    private static final double LEAST_ERROR = 0.01;
    private static final double MOST_GUESS = 0.5;

    public KnowledgeTracing {
        if (!(slips >= LEAST_ERROR) || !(guesses >= LEAST_ERROR) || !(slips + guesses < 1)) {
            throw new IllegalArgumentException("slips " + slips + " and guesses " + guesses + " do not go together");
        }
        if (!(known >= 0 && known <= 1) || !(learns >= 0 && learns <= 1)) {
            throw new IllegalArgumentException("known " + known + " and learns " + learns + " are no chances");
        }
    }

    /** {@return the proposal for a skill whose problems are guessed with that chance; a judgement, not fitted to data} */
    public static KnowledgeTracing ofGuess(double guess) {
        return new KnowledgeTracing(0.20, 0.10, 0.10, Math.min(MOST_GUESS, Math.max(LEAST_ERROR, guess)));
    }

    /** {@return the chance that the skill is known, given what was answered and before learning from it} */
    public double given(double chance, boolean right) {
        double ifKnown = right ? 1 - slips : slips;
        double ifNot = right ? guesses : 1 - guesses;
        return chance * ifKnown / (chance * ifKnown + (1 - chance) * ifNot);
    }

    /** {@return the chance that the skill is known after an answer, kept off 0 and 1 so that it can always move} */
    public double after(double chance, boolean right) {
        double given = given(chance, right);
        double learned = given + (1 - given) * learns;
        return Math.min(1 - LEAST, Math.max(LEAST, learned));
    }

    /** {@return the chance that the next answer is right} */
    public double rightNext(double chance) {
        return chance * (1 - slips) + (1 - chance) * guesses;
    }
}
