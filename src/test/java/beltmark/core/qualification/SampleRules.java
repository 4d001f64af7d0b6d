package beltmark.core.qualification;

import static beltmark.core.qualification.Needs.Kind.DEMONSTRATIONS;
import static beltmark.core.qualification.Needs.Kind.PAPERS;
import static beltmark.core.qualification.Needs.Kind.QUIZ;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Rules to judge by in tests. Days are counted from the first of January 2026, which is day 0. */
final class SampleRules {

    static final LocalDate DAY_0 = LocalDate.of(2026, 1, 1);
    static final long PERSON = 7;
    static final long SUPERVISOR = 8;
    static final String CARD = "test-card";

    /** The quiz counts for 365 days, a demonstration for 400; events hold or lapse. */
    static final String BASIC = "basic";

    private static final List<CleanNeed> CLEAN = List.of(new CleanNeed("bench", 3), new CleanNeed("mount-marks", 2));
    private static final Optional<Needs.Pass> A_YEAR = Optional.of(new Needs.Pass("lockout", 365));
    private static final List<Consequence> EVENTS = List.of(
            Consequence.hold(EventKind.RETRAINING_ORDERED),
            Consequence.hold(EventKind.INSPECTION_FAILED),
            Consequence.lapse(EventKind.RETRAINING_ORDERED, Set.of(QUIZ)),
            Consequence.lapse(EventKind.PROCEDURE_CHANGED, Set.of(QUIZ, PAPERS)),
            Consequence.lapse(EventKind.HAZARD_ADDED, Set.of(QUIZ, DEMONSTRATIONS)));

    /** All of them. */
    static final Rules RULES = Rules.of(List.of(
            rule(BASIC, 1, -3_000, needs(CLEAN, A_YEAR, List.of(), shown(1, 400), List.of()), EVENTS),
            rule("two", 1, -3_000, needs(CLEAN, A_YEAR, List.of(), shown(2, 370), List.of()), EVENTS),
            rule(
                    "paper",
                    1,
                    -3_000,
                    needs(
                            List.of(),
                            Optional.empty(),
                            List.of(new Needs.Pass("set-up", 200)),
                            Optional.empty(),
                            List.of()),
                    EVENTS),
            // needs the paper above on the day, and shows a set-up
            rule(
                    "after",
                    1,
                    -3_000,
                    needs(List.of(), Optional.empty(), List.of(), shown(1, 400), List.of("paper")),
                    EVENTS),
            rule(
                    "absence",
                    1,
                    -3_000,
                    needs(List.of(), A_YEAR, List.of(), shown(1, 400), List.of()),
                    List.of(Consequence.absence(90, Set.of(DEMONSTRATIONS)))),
            // from day 100 on the quiz counts half as long, and a procedure that changes matters
            rule("versions", 1, 0, needs(List.of(), A_YEAR, List.of(), Optional.empty(), List.of()), List.of()),
            rule(
                    "versions",
                    2,
                    100,
                    needs(
                            List.of(),
                            Optional.of(new Needs.Pass("lockout", 180)),
                            List.of(),
                            Optional.empty(),
                            List.of()),
                    List.of(Consequence.lapse(EventKind.PROCEDURE_CHANGED, Set.of(QUIZ)))),
            // from day 200 on a paper is needed too
            rule("stricter", 1, -3_000, needs(List.of(), A_YEAR, List.of(), Optional.empty(), List.of()), List.of()),
            rule(
                    "stricter",
                    2,
                    200,
                    needs(List.of(), A_YEAR, List.of(new Needs.Pass("set-up", 300)), Optional.empty(), List.of()),
                    List.of())));

    private SampleRules() {}

    static LocalDate day(int number) {
        return DAY_0.plusDays(number);
    }

    private static Needs needs(
            List<CleanNeed> clean,
            Optional<Needs.Pass> quiz,
            List<Needs.Pass> papers,
            Optional<Needs.Demonstrations> shown,
            List<String> prerequisites) {
        return new Needs(clean, quiz, papers, shown, prerequisites);
    }

    private static Optional<Needs.Demonstrations> shown(int count, int days) {
        return Optional.of(new Needs.Demonstrations(count, days));
    }

    private static QualificationRule rule(String id, int version, int from, Needs needs, List<Consequence> events) {
        return new QualificationRule(
                id, version, day(from), Optional.of(CARD), List.of("test-procedure"), needs, events, 30);
    }
}
