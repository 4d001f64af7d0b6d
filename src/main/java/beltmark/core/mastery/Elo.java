package beltmark.core.mastery;

/**
 * Elo rating of people and problem families (Pelanek 2016, abstract seen; formula from memory). It ranks families by how
 * hard they are in practice and decides nothing else.
 *
 * @param skill of the person, in logits
 * @param answers how many answers of the person it rests on
 * @param difficulty of the family, in logits
 * @param asked how many answers to the family it rests on
 */
public record Elo(double skill, int answers, double difficulty, int asked) {

    private static final double FIRST_STEP = 1;
    private static final double SLOWING = 0.05;

    /** {@return the chance of a right answer when a guess is right with {@code guess}} */
    public double right(double guess) {
        return guess + (1 - guess) / (1 + Math.exp(difficulty - skill));
    }

    /** {@return both ratings after an answer} */
    public Elo after(boolean right, double guess) {
        double surprise = (right ? 1 : 0) - right(guess);
        return new Elo(skill + step(answers) * surprise, answers + 1, difficulty - step(asked) * surprise, asked + 1);
    }

    private static double step(int seen) {
        return FIRST_STEP / (1 + SLOWING * seen);
    }
}
