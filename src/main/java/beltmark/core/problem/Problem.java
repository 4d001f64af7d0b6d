package beltmark.core.problem;

import java.util.List;

/**
 * One seeded instance of a problem family.
 *
 * @param family the family's id
 * @param version the family's version; a code means another problem under another version
 * @param code the code it was drawn from
 * @param scene what it is about, in its numbers
 * @param givens what is told, besides what each part tells
 * @param parts what is asked, in order
 */
public record Problem(String family, int version, ProblemCode code, Scene scene, List<Given> givens, List<Part> parts) {

    public Problem {
        givens = List.copyOf(givens);
        parts = List.copyOf(parts);
    }

    /** {@return whether each blank can be judged without mistaking one value for another} */
    public boolean isFair() {
        return parts.stream().flatMap(part -> part.blanks().stream()).allMatch(Blank::isFair);
    }
}
