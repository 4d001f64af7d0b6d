package beltmark.core.problem;

import beltmark.core.setup.HardwareCard;
import java.util.List;
import java.util.function.Function;

/**
 * A family whose problems are drawn by a recipe, again and again until one is fair.
 *
 * @param id the hyphenated name
 * @param version counts up whenever a code would mean another problem
 * @param recipes the recipe for some cards
 * @param recipe the recipe for the cards that are drawn from
 */
public record DrawnFamily(String id, int version, Function<List<HardwareCard>, Recipe> recipes, Recipe recipe)
        implements ProblemFamily {

    private static final int MOST_DRAWS = 2_000;

    /**
     * Makes a family.
     *
     * @param id the hyphenated name
     * @param version counts up whenever a code would mean another problem
     * @param recipes the recipe for some cards; throws {@link IllegalArgumentException} when a range is missing
     * @param cards the hardware that is drawn from
     */
    public static DrawnFamily of(
            String id, int version, Function<List<HardwareCard>, Recipe> recipes, List<HardwareCard> cards) {
        return new DrawnFamily(id, version, recipes, recipes.apply(cards));
    }

    @Override
    public ProblemFamily on(HardwareCard card) {
        return of(id, version, recipes, List.of(card));
    }

    /** {@inheritDoc} */
    @Override
    public Trial trial(ProblemCode code, Draw draw) {
        for (int draws = 1; draws <= MOST_DRAWS; draws++) {
            Recipe.Posed posed = recipe.pose(draw).orElse(null);
            if (posed != null) {
                Problem problem = new Problem(id, version, code, posed.scene(), posed.givens(), posed.parts());
                if (problem.isFair()) {
                    return new Trial(problem, draws);
                }
            }
        }
        throw new IllegalStateException("family " + id + " gives no fair problem for code " + code.text());
    }
}
