package beltmark.drawing.problem;

import beltmark.core.problem.OwnFigures;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.texts.Words;
import java.util.Set;

/**
 * To whom a problem is drawn, and what may be told of it.
 *
 * @param problem the problem
 * @param solved the ids of the parts whose answers may be told
 * @param own the person's own figures so far
 * @param words the reader's words
 */
public record Telling(Problem problem, Set<String> solved, OwnFigures own, Words words) {

    public Telling {
        solved = Set.copyOf(solved);
    }

    /** {@return whether the answers of a part may stand on a drawing} */
    public boolean tells(Part part) {
        return solved.contains(part.id());
    }

    /** {@return whether the problem has a part of that id} */
    public boolean asks(String part) {
        return problem.parts().stream().anyMatch(asked -> asked.id().equals(part));
    }
}
