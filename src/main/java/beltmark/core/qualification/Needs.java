package beltmark.core.qualification;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What a person must have to be cleared. An age of n days means that the n-th day after is the last that counts.
 *
 * @param clean problems worked clean; they do not age
 * @param quiz the quiz to be passed, if there is one
 * @param papers the papers to be passed
 * @param demonstrations the demonstrations to be shown, if any
 * @param prerequisites the ids of other qualifications that must be cleared on the day
 */
public record Needs(
        List<CleanNeed> clean,
        Optional<Pass> quiz,
        List<Pass> papers,
        Optional<Demonstrations> demonstrations,
        List<String> prerequisites) {

    /** The kinds of need that an event can ask for again. */
    public enum Kind {
        /** The quiz. */
        QUIZ("quiz"),
        /** All papers. */
        PAPERS("papers"),
        /** All demonstrations. */
        DEMONSTRATIONS("demonstrations");

        private final String id;

        Kind(String id) {
            this.id = id;
        }

        /** {@return the word used in rule files} */
        public String id() {
            return id;
        }
    }

    /**
     * A quiz or paper to be passed.
     *
     * @param id its id
     * @param days how long a pass counts, at least 1
     */
    public record Pass(String id, int days) {
        public Pass {
            requireAtLeastOne("days of " + id, days);
        }
    }

    /**
     * Demonstrations on the rule's card, each signed by another person.
     *
     * @param count how many must count together, at least 1
     * @param days how long each counts, at least 1
     */
    public record Demonstrations(int count, int days) {
        public Demonstrations {
            requireAtLeastOne("count of demonstrations", count);
            requireAtLeastOne("days of a demonstration", days);
        }
    }

    public Needs {
        clean = List.copyOf(clean);
        papers = List.copyOf(papers);
        prerequisites = List.copyOf(prerequisites);
        if (quiz.isEmpty() && papers.isEmpty() && demonstrations.isEmpty() && prerequisites.isEmpty()) {
            throw new IllegalArgumentException("a qualification that never runs out: it needs a quiz, a paper, "
                    + "a demonstration or another qualification");
        }
    }

    /** {@return the shortest time for which a need counts, if one ages} */
    Optional<Integer> findShortestDays() {
        IntStream passes = Stream.concat(quiz.stream(), papers.stream()).mapToInt(Pass::days);
        IntStream shown = demonstrations.stream().mapToInt(Demonstrations::days);
        return IntStream.concat(passes, shown).boxed().min(Integer::compare);
    }

    private static void requireAtLeastOne(String what, int value) {
        if (value < 1) {
            throw new IllegalArgumentException("the " + what + " is " + value + ", not at least 1");
        }
    }
}
