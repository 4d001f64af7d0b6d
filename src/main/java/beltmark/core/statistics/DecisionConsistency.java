package beltmark.core.statistics;

/**
 * How often people would be judged the same, passed or not, by two forms of a test, estimated from one form by a
 * beta-binomial model (H. Huynh 1976, J. Educ. Meas. 13, 253-264; formula from memory): with M the mean and r = KR-21,
 * a = (1/r − 1) M and b = (1/r − 1)(k − M); f(x,y) = C(k,x) C(k,y) B(a+x+y, b+2k−x−y) / B(a,b).
 *
 * @param passing the part of the people that passes by the model, 0..1
 * @param agreement p₀, 0..1: the part judged the same twice
 * @param kappa what of that is beyond chance, (p₀ − p_c)/(1 − p_c) with p_c = passing² + (1 − passing)²
 */
public record DecisionConsistency(Measure passing, Measure agreement, Measure kappa) {

    /** Less disagreement by chance than this is rounding. */
    private static final double LEAST_CHANCE = 1e-12;

    /** {@return no estimate, for the same reason three times} */
    public static DecisionConsistency undefined(Undefined why) {
        return new DecisionConsistency(Measure.undefined(why), Measure.undefined(why), Measure.undefined(why));
    }

    /**
     * Huynh's estimate.
     *
     * @param scores the scores on one form
     * @param cut the least score that passes, 0..k
     */
    public static DecisionConsistency of(Scores scores, int cut) {
        if (cut < 0 || cut > scores.items()) {
            throw new IllegalArgumentException("a cut of " + cut + " in a test of " + scores.items());
        }
        Measure reliability = Reliability.kr21(scores);
        Undefined why = reliability.undefined();
        if (why != null) {
            return undefined(why);
        }
        double r = reliability.toOptional().orElseThrow();
        if (r <= 0) {
            return undefined(Undefined.KR21_NOT_POSITIVE);
        }
        // r reaches 1 only if every score is 0 or k
        if (scores.at(0) + scores.at(scores.items()) == scores.people()) {
            return undefined(Undefined.KR21_IS_ONE);
        }
        double mean = scores.mean().toOptional().orElseThrow();
        return of(new BetaBinomial(scores.items(), (1 / r - 1) * mean, (1 / r - 1) * (scores.items() - mean)), cut);
    }

    private static DecisionConsistency of(BetaBinomial model, int cut) {
        double passing = model.atLeast(cut);
        double agreement = 1 - 2 * model.disagreement(cut);
        double disagreementByChance = 2 * passing * (1 - passing);
        return new DecisionConsistency(
                Measure.of(passing),
                Measure.of(agreement),
                disagreementByChance < LEAST_CHANCE
                        ? Measure.undefined(Undefined.ONE_SIDE)
                        : Measure.of(1 - (1 - agreement) / disagreementByChance));
    }
}
