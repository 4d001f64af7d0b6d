package beltmark.demo;

import beltmark.core.problem.Answer;
import beltmark.core.problem.Blank;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.LengthBlank;
import beltmark.core.problem.Part;
import beltmark.core.problem.Problem;
import beltmark.core.problem.ProblemCode;
import beltmark.core.units.Graduation;
import beltmark.core.units.LengthPrinter;
import beltmark.demo.DemoYear.Practised;
import beltmark.people.People;
import beltmark.practice.Practice;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Function;

/** Works problems as somebody did. */
public final class DemoPractice {

    /** Codes follow from it, so that every demo site has the same problems. */
    private static final long SEED = 407_182;

    private final People people;
    private final Practice practice;
    private final SplittableRandom random = new SplittableRandom(SEED);

    /**
     * @param people who there is
     * @param practice the feature, with the demo's clock
     */
    public DemoPractice(People people, Practice practice) {
        this.people = people;
        this.practice = practice;
    }

    void play(Practised practised) {
        Visitor person = people.getVisitor(practised.who());
        for (String family : practised.families()) {
            for (int i = 0; i < practised.slips() + practised.clean(); i++) {
                Problem problem =
                        practice.getProblem(family, ProblemCode.fresh(random).text());
                work(person, problem, i < practised.slips());
            }
        }
    }

    private void work(Visitor person, Problem problem, boolean slips) {
        Part first = problem.parts().get(0);
        if (slips) {
            answer(person, problem, first, DemoPractice::slip);
        }
        problem.parts().forEach(part -> answer(person, problem, part, DemoPractice::right));
    }

    private void answer(Visitor person, Problem problem, Part part, Function<Blank, String> typing) {
        Map<String, String> typed = new HashMap<>();
        part.blanks().forEach(blank -> typed.put(blank.id(), typing.apply(blank)));
        practice.answer(person, problem, part.id(), typed, OperationId.fresh()).join();
    }

    private static String right(Blank blank) {
        return blank.right() instanceof Answer.OfLength length
                ? LengthPrinter.print(length.length(), Graduation.SIXTEENTH_INCH)
                : ((Answer.OfChoice) blank.right()).option();
    }

    private static String slip(Blank blank) {
        return blank instanceof LengthBlank length
                ? LengthPrinter.print(length.slips().get(0).value(), Graduation.SIXTEENTH_INCH)
                : ((ChoiceBlank) blank)
                        .options().stream()
                                .filter(option -> !option.equals(right(blank)))
                                .findFirst()
                                .orElseThrow();
    }
}
