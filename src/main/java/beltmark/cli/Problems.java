package beltmark.cli;

import beltmark.content.Content;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;

/** Finds the problem that a command line names. */
record Problems(Content content) {

    /** {@return the problem; throws {@link GradeRefused} when there is none} */
    Problem get(String family, String code) {
        ProblemFamily known = content.findFamily(family)
                .orElseThrow(() -> GradeRefused.unknown(
                        GradeFault.UNKNOWN_FAMILY,
                        family,
                        content.families().stream().map(ProblemFamily::id).toList()));
        return known.problem(ProblemCode.parse(code)
                .orElseThrow(
                        () -> new GradeRefused(GradeFault.NO_CODE).typed(code).with("longest", ProblemCode.LONGEST)));
    }
}
