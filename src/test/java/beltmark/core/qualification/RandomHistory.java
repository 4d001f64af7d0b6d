package beltmark.core.qualification;

import static beltmark.core.qualification.SampleRules.CARD;
import static beltmark.core.qualification.SampleRules.PERSON;
import static beltmark.core.qualification.SampleRules.SUPERVISOR;
import static beltmark.core.qualification.SampleRules.day;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;

/**
 * Some years of a person, from a seed: work, orders, events, releases and withdrawals, most of them told at once and some
 * up to two months late.
 */
final class RandomHistory {

    private static final int DAYS = 900;
    private static final List<FactKind> KINDS = List.of(
            FactKind.CLEAN,
            FactKind.CLEAN,
            FactKind.CLEAN,
            FactKind.QUIZ_PASSED,
            FactKind.QUIZ_PASSED,
            FactKind.QUIZ_PASSED,
            FactKind.PAPER_PASSED,
            FactKind.PAPER_PASSED,
            FactKind.DEMONSTRATION,
            FactKind.DEMONSTRATION,
            FactKind.DEMONSTRATION,
            FactKind.HOLD,
            FactKind.EVENT,
            FactKind.EVENT,
            FactKind.RELEASE,
            FactKind.RELEASE,
            FactKind.WITHDRAWAL);
    private static final List<EventKind> EVENTS = List.of(
            EventKind.RETRAINING_ORDERED,
            EventKind.INSPECTION_FAILED,
            EventKind.PROCEDURE_CHANGED,
            EventKind.HAZARD_ADDED,
            EventKind.JOB_CHANGED);

    /** When something happened and was told, as numbers of days. */
    private record Told(int on, int told) {}

    final List<Fact> facts = new ArrayList<>();
    final List<Activity> activity = new ArrayList<>();
    private final List<Activity> late = new ArrayList<>();
    private final SplittableRandom random;

    RandomHistory(long seed) {
        random = new SplittableRandom(seed);
        List<Told> times = new ArrayList<>();
        for (int i = random.nextInt(25); i > 0; i--) {
            int on = random.nextInt(DAYS);
            times.add(new Told(on, on + (random.nextInt(10) < 7 ? 0 : random.nextInt(60))));
        }
        times.sort(Comparator.comparingInt(Told::told));
        times.forEach(this::add);
        fewWorkDays();
    }

    private void add(Told time) {
        FactKind kind = KINDS.get(random.nextInt(KINDS.size()));
        long record = facts.size() + 1L;
        boolean own = kind == FactKind.CLEAN || isWork(kind);
        Scope scope = own ? Scope.person(PERSON) : scope();
        long by = kind == FactKind.DEMONSTRATION ? (random.nextInt(6) == 0 ? PERSON : SUPERVISOR) : 0;
        boolean points = kind == FactKind.RELEASE || kind == FactKind.WITHDRAWAL;
        long of = points ? pointed(kind) : 0;
        facts.add(new Fact(record, kind, scope, subject(kind), by, of, day(time.on), History.end(day(time.told))));
    }

    /** Days of work of any kind, told at once or late, in the order in which they are told. */
    private void fewWorkDays() {
        List<Told> times = new ArrayList<>();
        facts.stream()
                .filter(fact -> fact.kind() == FactKind.CLEAN || isWork(fact.kind()))
                .forEach(fact -> times.add(new Told(number(fact.on()), toldOn(fact))));
        for (int i = random.nextInt(20); i > 0; i--) {
            int on = random.nextInt(DAYS);
            times.add(new Told(on, on + (random.nextInt(10) < 8 ? 0 : random.nextInt(60))));
        }
        times.sort(Comparator.comparingInt(Told::told));
        TreeSet<LocalDate> before = new TreeSet<>();
        for (Told time : times) {
            LocalDate on = day(time.on);
            LocalDate lower = before.lower(on);
            if (before.add(on)) {
                int gap = lower == null ? 0 : (int) (on.toEpochDay() - lower.toEpochDay());
                Activity one = new Activity(on, History.end(day(time.told)), gap);
                activity.add(one);
                if (before.higher(on) != null) {
                    late.add(one);
                }
            }
        }
    }

    /** {@return what the database hands over for a day and a moment: gaps, what was told late, and the last day} */
    List<Activity> read(LocalDate on, java.time.Instant known) {
        List<Activity> told =
                activity.stream().filter(one -> !one.knownAt().isAfter(known)).toList();
        List<Activity> read = new ArrayList<>(told.stream()
                .filter(one -> one.gapDays() >= Consequence.SHORTEST_ABSENCE || late.contains(one))
                .toList());
        told.stream()
                .filter(one -> !one.day().isAfter(on))
                .max(Comparator.comparing(Activity::day))
                .ifPresent(read::add);
        return read;
    }

    private static boolean isWork(FactKind kind) {
        return kind == FactKind.QUIZ_PASSED || kind == FactKind.PAPER_PASSED || kind == FactKind.DEMONSTRATION;
    }

    private Scope scope() {
        return switch (random.nextInt(8)) {
            case 0 -> Scope.all();
            case 1 -> Scope.card(CARD);
            case 2 -> Scope.procedure("test-procedure");
            case 3 -> Scope.procedure("other-procedure");
            case 4 -> Scope.person(99);
            default -> Scope.person(PERSON);
        };
    }

    private String subject(FactKind kind) {
        return switch (kind) {
            case CLEAN -> random.nextBoolean() ? "bench" : "mount-marks";
            case QUIZ_PASSED -> "lockout";
            case PAPER_PASSED -> "set-up";
            case DEMONSTRATION -> random.nextInt(6) == 0 ? "other-card" : CARD;
            case EVENT -> EVENTS.get(random.nextInt(EVENTS.size())).id();
            case HOLD, RELEASE, WITHDRAWAL -> "";
        };
    }

    /** A release points at a hold or an event if there is one, a withdrawal at anything. */
    private long pointed(FactKind kind) {
        List<Long> able = facts.stream()
                .filter(fact ->
                        kind == FactKind.WITHDRAWAL || fact.kind() == FactKind.HOLD || fact.kind() == FactKind.EVENT)
                .map(Fact::record)
                .toList();
        return able.isEmpty() ? 1 : able.get(random.nextInt(able.size()));
    }

    private static int number(LocalDate on) {
        return (int) (on.toEpochDay() - day(0).toEpochDay());
    }

    private static int toldOn(Fact fact) {
        return number(LocalDate.ofInstant(fact.knownAt(), java.time.ZoneOffset.UTC));
    }
}
