package beltmark.preview;

import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.Draw;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.problem.ProblemFamily.Trial;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/** Reports on families; each is worked out once, when it is first asked for, since content does not change while running. */
final class Reports {

    /** How many problems of a family a report looks at. */
    static final int CODES = 2_000;

    private final List<ProblemFamily> families;
    private final Map<String, FamilyReport> known = new ConcurrentHashMap<>();

    Reports(List<ProblemFamily> families) {
        this.families = List.copyOf(families);
    }

    List<FamilyReport> all() {
        return families.stream()
                .map(family -> known.computeIfAbsent(family.id(), id -> report(family)))
                .toList();
    }

    static FamilyReport report(ProblemFamily family) {
        List<Trial> trials = IntStream.range(0, CODES)
                .mapToObj(i -> new ProblemCode(Integer.toString(i)))
                .map(code -> family.trial(code, Draw.of(family.id(), code)))
                .toList();
        Set<Object> variants = new HashSet<>();
        Set<String> slips = new HashSet<>();
        Map<Answer, Integer> answers = new HashMap<>();
        long draws = 0;
        for (Trial trial : trials) {
            Problem problem = trial.problem();
            draws += trial.draws();
            variants.add(problem.scene().facts());
            problem.parts().forEach(part -> addSlips(part, slips));
            answers.merge(problem.parts().get(0).blanks().get(0).right(), 1, Integer::sum);
        }
        int most = answers.values().stream().mapToInt(Integer::intValue).max().orElse(0);
        return new FamilyReport(
                family.id(), variants.size(), (draws - CODES) / (double) draws, slips.size(), answers.size(), most);
    }

    private static void addSlips(Part part, Set<String> slips) {
        for (Blank blank : part.blanks()) {
            blank.wrongAnswers().forEach(wrong -> slips.add(part.id() + "." + wrong.slip()));
        }
    }
}
