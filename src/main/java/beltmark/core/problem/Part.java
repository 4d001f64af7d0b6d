package beltmark.core.problem;

import beltmark.core.solution.Step;
import java.util.List;

/**
 * One thing asked in a problem.
 *
 * @param id hyphenated name, the key of its wording
 * @param givens what is told for this part only
 * @param exhibits the tables that are shown with this part
 * @param blanks what is to be filled in, in order
 * @param steps how it is worked
 */
public record Part(String id, List<Given> givens, List<Exhibit> exhibits, List<Blank> blanks, List<Step> steps) {

    public Part {
        givens = List.copyOf(givens);
        exhibits = List.copyOf(exhibits);
        blanks = List.copyOf(blanks);
        steps = List.copyOf(steps);
    }

    /** A part without tables. */
    public Part(String id, List<Given> givens, List<? extends Blank> blanks, List<Step> steps) {
        this(id, givens, List.of(), List.copyOf(blanks), steps);
    }

    /** {@return the path of one of its blanks within the problem} */
    public String path(Blank blank) {
        return path(id, blank.id());
    }

    /** {@return the path of a blank within the problem} */
    public static String path(String part, String blank) {
        return part + "." + blank;
    }
}
