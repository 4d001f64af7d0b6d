package beltmark.core.qualification;

import static beltmark.core.qualification.SampleRules.CARD;
import static beltmark.core.qualification.SampleRules.PERSON;
import static beltmark.core.qualification.SampleRules.SUPERVISOR;
import static beltmark.core.qualification.SampleRules.day;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * What happened to a person, written in one line: records with semicolons between, each with its day, what it says, and
 * the day from which it was known when that was a later one, as in {@code 0 drills; 1 quiz; 2 shown @5; 9 hold}. The first
 * record has the number 1.
 */
final class History {

    private final List<Fact> facts = new ArrayList<>();
    private final List<Activity> activity = new ArrayList<>();
    private final TreeSet<LocalDate> active = new TreeSet<>();
    private long record;

    private History() {}

    static Facts of(String line) {
        History history = new History();
        for (String record : line.split(";", -1)) {
            if (!record.isBlank()) {
                history.add(record.strip().split(" +", -1));
            }
        }
        return new Facts(PERSON, history.facts, history.activity);
    }

    /** {@return the moment at which a day ends} */
    static Instant end(LocalDate day) {
        return day.plusDays(1).atStartOfDay(ZoneOffset.UTC).toInstant().minusMillis(1);
    }

    private void add(String[] words) {
        record++;
        int on = Integer.parseInt(words[0]);
        String last = words[words.length - 1];
        int told = last.startsWith("@") ? Integer.parseInt(last.substring(1)) : on;
        String argument = words.length > 2 && !words[2].startsWith("@") ? words[2] : "";
        Scope scope = words.length > 3 && !words[3].startsWith("@") ? scope(words[3]) : Scope.person(PERSON);
        switch (words[1]) {
            case "drills" -> {
                clean(on, told, "bench", 3);
                clean(on, told, "mount-marks", 2);
            }
            case "bench", "mount-marks" -> clean(on, told, words[1], Integer.parseInt(argument));
            case "quiz" -> work(on, told, FactKind.QUIZ_PASSED, "lockout", 0);
            case "paper" -> work(on, told, FactKind.PAPER_PASSED, "set-up", 0);
            case "shown" -> work(on, told, FactKind.DEMONSTRATION, CARD, SUPERVISOR);
            case "shown-to-self" -> work(on, told, FactKind.DEMONSTRATION, CARD, PERSON);
            case "shown-elsewhere" -> work(on, told, FactKind.DEMONSTRATION, "other-card", SUPERVISOR);
            case "active" -> active(on, told);
            case "hold" -> fact(on, told, FactKind.HOLD, scope, "", 0, 0);
            case "release" -> fact(on, told, FactKind.RELEASE, scope, "", 0, Long.parseLong(argument));
            case "withdraw" -> fact(on, told, FactKind.WITHDRAWAL, scope, "", 0, Long.parseLong(argument));
            default -> fact(on, told, FactKind.EVENT, argument.isEmpty() ? scope : scope(argument), words[1], 0, 0);
        }
    }

    private static Scope scope(String word) {
        return switch (word) {
            case "all" -> Scope.all();
            case "card" -> Scope.card(CARD);
            case "other-card" -> Scope.card("other-card");
            case "procedure" -> Scope.procedure("test-procedure");
            case "other-procedure" -> Scope.procedure("other-procedure");
            case "other-person" -> Scope.person(99);
            default -> throw new IllegalArgumentException(word);
        };
    }

    private void clean(int on, int told, String family, int count) {
        for (int i = 0; i < count; i++) {
            work(on, told, FactKind.CLEAN, family, 0);
        }
    }

    private void work(int on, int told, FactKind kind, String subject, long by) {
        fact(on, told, kind, Scope.person(PERSON), subject, by, 0);
        active(on, told);
    }

    private void active(int on, int told) {
        LocalDate before = active.lower(day(on));
        if (active.add(day(on))) {
            int gap = before == null ? 0 : (int) (day(on).toEpochDay() - before.toEpochDay());
            activity.add(new Activity(day(on), end(day(told)), gap));
        }
    }

    private void fact(int on, int told, FactKind kind, Scope scope, String subject, long by, long of) {
        facts.add(new Fact(record, kind, scope, subject, by, of, day(on), end(day(told))));
    }
}
