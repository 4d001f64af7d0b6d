package beltmark.core.problem;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import beltmark.Sample;
import beltmark.core.grading.Grade;
import beltmark.core.grading.Grader;
import beltmark.core.grading.Verdict;
import beltmark.core.measure.Unit;
import beltmark.core.problem.Blank.WrongAnswer;
import beltmark.core.units.LengthPrinter;
import beltmark.core.units.LengthUnit;
import java.math.BigDecimal;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every family that is shipped, over ten thousand codes: each problem can be worked, judged and told apart. */
class EveryFamilyTest {

    private static final int CODES = 10_000;
    private static final int FEWEST_VARIANTS = 1_000;

    static Stream<ProblemFamily> families() {
        return Sample.content().families().stream();
    }

    @ParameterizedTest
    @MethodSource("families")
    void hasAThousandVariantsAtLeast(ProblemFamily family) {
        long variants = Sample.codes(CODES)
                .map(code -> family.problem(code).scene().facts())
                .distinct()
                .count();
        assertTrue(variants >= FEWEST_VARIANTS, family.id() + " has only " + variants);
    }

    @ParameterizedTest
    @MethodSource("families")
    void theSameCodeGivesTheSameProblem(ProblemFamily family) {
        Sample.codes(100)
                .forEach(code -> assertEquals(
                        family.problem(code).scene().facts(),
                        family.problem(code).scene().facts()));
    }

    @ParameterizedTest
    @MethodSource("families")
    void theRightAnswerIsRightInBothUnits(ProblemFamily family) {
        forEachBlank(family, (part, blank) -> {
            for (LengthUnit unit : LengthUnit.values()) {
                Grade grade = Grader.grade(blank, typed(blank, blank.right(), unit), unit, OwnFigures.NONE);
                assertEquals(Verdict.RIGHT, grade.verdict(), () -> family.id() + " " + part.id() + " " + blank);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("families")
    void everyDeclaredSlipIsNamed(ProblemFamily family) {
        forEachBlank(family, (part, blank) -> {
            for (WrongAnswer wrong : blank.wrongAnswers()) {
                String typed = typed(blank, wrong.answer(), LengthUnit.MILLIMETRE);
                Grade grade = Grader.grade(blank, typed, LengthUnit.MILLIMETRE, OwnFigures.NONE);
                assertEquals(wrong.slip(), grade.slip(), () -> family.id() + " " + part.id() + " " + blank);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("families")
    void everyTextIsThere(ProblemFamily family) {
        Map<String, Part> parts = new TreeMap<>();
        Sample.codes(500).forEach(code -> family.problem(code).parts().forEach(part -> parts.put(part.id(), part)));
        assertFalse(Sample.says("problem.family." + family.id() + ".title").isBlank());
        assertFalse(Sample.says("problem.family." + family.id() + ".story").isBlank());
        for (Part part : parts.values()) {
            assertFalse(Sample.says("problem.part." + part.id() + ".title").isBlank());
            assertFalse(Sample.says("problem.part." + part.id() + ".ask").isBlank());
            for (Blank blank : part.blanks()) {
                assertFalse(Sample.says("problem.blank." + part.path(blank)).isBlank());
                blank.wrongAnswers()
                        .forEach(wrong -> assertNotNull(Sample.says("problem.slip." + part.id() + "." + wrong.slip())));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("families")
    void whateverIsTypedIsJudgedAndNothingIsThrown(ProblemFamily family) {
        Random random = new Random(7);
        String letters = "0123456789 ./,-:abcmin\"%°½NJ";
        Sample.codes(300)
                .flatMap(code -> family.problem(code).parts().stream())
                .flatMap(part -> part.blanks().stream())
                .forEach(blank -> {
                    String typed = random.ints(random.nextInt(12), 0, letters.length())
                            .mapToObj(i -> letters.substring(i, i + 1))
                            .collect(Collectors.joining());
                    assertNotNull(Grader.grade(blank, typed, LengthUnit.INCH, OwnFigures.NONE));
                });
    }

    private interface Check {
        void of(Part part, Blank blank);
    }

    private static void forEachBlank(ProblemFamily family, Check check) {
        Sample.codes(CODES)
                .flatMap(code -> family.problem(code).parts().stream())
                .forEach(part -> part.blanks().forEach(blank -> check.of(part, blank)));
    }

    /** What a person types who has that answer in mind, in full. */
    private static String typed(Blank blank, Answer answer, LengthUnit unit) {
        if (answer instanceof Answer.OfLength length) {
            return LengthPrinter.exact(length.length(), unit);
        }
        if (answer instanceof Answer.OfNumber number) {
            NumberBlank asked = (NumberBlank) blank;
            Unit own = unit == LengthUnit.INCH
                    ? asked.units().customary()
                    : asked.units().metric();
            return BigDecimal.valueOf(asked.units().metric().in(own, number.amount()))
                    .toPlainString();
        }
        if (answer instanceof Answer.OfChoice choice) {
            return choice.option();
        }
        if (answer instanceof Answer.OfSeveral several) {
            return String.join(" ", several.options());
        }
        return answer instanceof Answer.OfOrder order
                ? String.join(" ", order.items())
                : ((Answer.OfMatch) answer)
                        .partners().entrySet().stream()
                                .map(pair -> pair.getKey() + ":" + pair.getValue())
                                .collect(Collectors.joining(" "));
    }
}
