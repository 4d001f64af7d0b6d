package beltmark.core.procedure;

import java.util.List;
import java.util.stream.Stream;

/**
 * A version of a machine's written procedure, in the words of the site. What a written procedure contains is listed in 29
 * CFR 1910.147(c)(4)(ii)(A)-(D); this card holds its steps for shutting down, isolating, blocking and securing, and its
 * requirements for testing.
 *
 * @param id hyphenated, made from the name of the machine when it was first entered
 * @param version 1, 2, …
 * @param machine the name of the machine
 * @param use for which work it is meant
 * @param points where energy is isolated, {@value #FEWEST_POINTS} to {@value #MOST_POINTS}
 * @param energies what there is to control, at least one
 * @param steps what is done, first to last, {@value #FEWEST_STEPS} to {@value #MOST_STEPS}
 */
public record ProcedureCard(
        String id,
        int version,
        String machine,
        String use,
        List<Point> points,
        List<Energy> energies,
        List<String> steps) {

    /** The fewest points of a card. */
    public static final int FEWEST_POINTS = 1;

    /** The most points of a card. */
    public static final int MOST_POINTS = 8;

    /** The most energies of a card. */
    public static final int MOST_ENERGIES = 8;

    /** The fewest steps of a card. */
    public static final int FEWEST_STEPS = 3;

    /** The most steps of a card: more cannot be put in order in a question. */
    public static final int MOST_STEPS = 10;

    /** Refuses a card with too little or too much on it. */
    public ProcedureCard {
        points = List.copyOf(points);
        energies = List.copyOf(energies);
        steps = List.copyOf(steps);
        boolean sized = points.size() >= FEWEST_POINTS
                && points.size() <= MOST_POINTS
                && !energies.isEmpty()
                && energies.size() <= MOST_ENERGIES
                && steps.size() >= FEWEST_STEPS
                && steps.size() <= MOST_STEPS;
        if (version < 1 || machine.isBlank() || !sized) {
            throw new IllegalArgumentException("procedure " + id + " version " + version + " of \"" + machine + "\": "
                    + points.size() + " points, " + energies.size() + " energies, " + steps.size() + " steps");
        }
    }

    /** {@return whether another version says the same} */
    public boolean saysTheSameAs(ProcedureCard other) {
        return machine.equals(other.machine)
                && use.equals(other.use)
                && points.equals(other.points)
                && energies.equals(other.energies)
                && steps.equals(other.steps);
    }

    /** {@return the id under which qualifications hang on it} */
    public String qualificationId() {
        return qualificationId(id);
    }

    /** {@return the id under which qualifications hang on the procedure of that id} */
    public static String qualificationId(String procedure) {
        return "lockout-" + procedure;
    }

    /** {@return the texts that have to differ: steps, names of points, proofs} */
    Stream<String> verifications() {
        return points.stream().map(Point::verification);
    }

    /**
     * A point at which energy is isolated.
     *
     * @param name what it is, such as the disconnect of the head drive
     * @param kind the energy it isolates, the id of an {@link EnergyKind}
     * @param location where it is
     * @param verification how it is shown that it isolates
     */
    public record Point(String name, String kind, String location, String verification) {}

    /**
     * An energy of the machine.
     *
     * @param kind the id of an {@link EnergyKind}
     * @param magnitude how much of it, with its unit
     */
    public record Energy(String kind, String magnitude) {}
}
