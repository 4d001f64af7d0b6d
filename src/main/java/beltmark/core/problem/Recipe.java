package beltmark.core.problem;

import java.util.List;
import java.util.Optional;

/** How one problem of a family is made from drawn numbers. */
@FunctionalInterface
public interface Recipe {

    /** {@return a problem from the next numbers of the draw, or empty when they make none} */
    Optional<Posed> pose(Draw draw);

    /**
     * A problem without its name.
     *
     * @param scene what it is about
     * @param givens what is told, besides what each part tells
     * @param parts what is asked, in order
     */
    record Posed(Scene scene, List<Given> givens, List<Part> parts) {

        public Posed {
            givens = List.copyOf(givens);
            parts = List.copyOf(parts);
        }
    }
}
