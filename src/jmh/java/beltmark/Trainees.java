package beltmark;

import beltmark.content.Content;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.trainee.KnownSlip;
import beltmark.trainee.Learning;
import beltmark.trainee.Learning.Order;
import beltmark.trainee.Stray;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * Simulated trainees at all problem families: how often their slips are named rightly, how often slips are laid to people
 * who only guess, and how many problems it takes to master every family. The same seed prints the same table.
 *
 * <p>{@code mvn -Pbench test-compile exec:exec@bench -Dbench.main=beltmark.Trainees -Dbench=4}
 */
public final class Trainees {

    private static final int TRAINEES_PER_SLIP = 20;
    private static final int STRAY_TRAINEES = 200;
    private static final int LEARNERS = 500;
    private static final String ROW = "%-24s%6s%18s%16s%16s%18s%18s%18s%16s%n";

    private Trainees() {}

    /** Prints the table; the last argument, if there is one, is the seed. */
    public static void main(String[] args) {
        long seed = args.length == 0 ? 4 : Long.parseLong(args[args.length - 1]);
        List<ProblemFamily> families = Content.read().families();
        printDiagnosis(families, new SplittableRandom(seed));
        printLearning(families, seed);
    }

    private static void printDiagnosis(List<ProblemFamily> families, SplittableRandom random) {
        System.out.println("slips of trainees who have one | slips laid to trainees who guess, at wrong answers");
        System.out.printf(
                ROW, "family", "slips", "named", "habit found", "wrong habit", "values", "sets", "choices", "habit");
        KnownSlip.Result known = KnownSlip.Result.NONE;
        Stray.Result stray = Stray.Result.NONE;
        for (ProblemFamily family : families) {
            KnownSlip.Result ownSlips = KnownSlip.of(family, TRAINEES_PER_SLIP, random.split());
            Stray.Result ownStray = Stray.of(family, STRAY_TRAINEES, random.split());
            print(family.id(), ownSlips, ownStray);
            known = known.and(ownSlips);
            stray = stray.and(ownStray);
        }
        print("all", known, stray);
        System.out.println("values and sets together: " + stray.values().and(stray.sets()));
    }

    private static void print(String name, KnownSlip.Result known, Stray.Result stray) {
        System.out.printf(
                ROW,
                name,
                known.slips(),
                known.named(),
                known.confirmed(),
                known.accused(),
                stray.values(),
                stray.sets(),
                stray.choices(),
                stray.habits());
    }

    private static void printLearning(List<ProblemFamily> families, long seed) {
        Map<String, Double> guesses = new LinkedHashMap<>();
        families.forEach(family -> guesses.put(family.id(), guess(family)));
        long fixed = Learning.median(guesses, Order.FIXED, LEARNERS, seed);
        System.out.printf("problems until all %d families are mastered, median of %d:%n", guesses.size(), LEARNERS);
        for (Order order : Order.values()) {
            long needed = Learning.median(guesses, order, LEARNERS, seed);
            System.out.printf("%-24s%6d  %+d %%%n", order, needed, Math.round(100.0 * (needed - fixed) / fixed));
        }
    }

    /** {@return how likely the hardest blank is right by guessing, as practice counts it} */
    private static double guess(ProblemFamily family) {
        Problem problem = family.problem(new ProblemCode("1"));
        return problem.parts().stream()
                .flatMap(part -> part.blanks().stream())
                .mapToDouble(Blank::guess)
                .min()
                .orElse(0);
    }
}
