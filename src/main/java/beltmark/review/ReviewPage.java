package beltmark.review;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The lockout review: people, questions, critical misses.
 *
 * @param view what all pages share
 * @param crew the crew chosen, 0 for all
 * @param crews the crews to choose from
 * @param summary how many of how many people passed
 * @param people where each person stands
 * @param questions what was missed, most missed first
 * @param critical the critical questions missed, by person
 */
public record ReviewPage(
        View view,
        long crew,
        List<CrewRow> crews,
        String summary,
        List<PersonRow> people,
        List<QuestionRow> questions,
        List<CriticalRow> critical)
        implements Page {

    /** {@return where the same is had as a file} */
    public String export() {
        return "/review/lockout.csv?crew=" + crew;
    }

    /**
     * A crew to choose.
     *
     * @param id the crew
     * @param name its name
     * @param chosen whether it is chosen
     */
    public record CrewRow(long id, String name, boolean chosen) {}

    /**
     * A person.
     *
     * @param name the person's name
     * @param crew the name of the crew
     * @param kind {@code passed}, {@code not-passed}, {@code open} or {@code not-taken}
     * @param status that in words
     * @param passedOn the day of the last pass, empty if never
     * @param age how long ago that was, empty if never
     * @param last the last finished sitting in words, empty if none
     * @param address where that can be looked at, null if none
     */
    public record PersonRow(
            String name,
            String crew,
            String kind,
            String status,
            String passedOn,
            String age,
            String last,
            @Nullable String address) {

        /** {@return the sign before the status} */
        public String sign() {
            return switch (kind) {
                case "passed" -> "✓";
                case "not-passed" -> "✕";
                default -> "–";
            };
        }
    }

    /**
     * A question.
     *
     * @param name what it is about
     * @param critical whether it is critical
     * @param missed in how many of how many sittings
     * @param interval the 95 % interval, or why there is none
     * @param belief the most frequent miss, empty if none
     * @param times how frequent that is, empty if none
     */
    public record QuestionRow(
            String name, boolean critical, String missed, String interval, String belief, String times) {}

    /**
     * A critical question that a person missed.
     *
     * @param person the person's name
     * @param crew the name of the crew
     * @param question what it is about
     * @param times in how many sittings
     * @param last the day of the last of them
     * @param address where that can be looked at
     */
    public record CriticalRow(String person, String crew, String question, long times, String last, String address) {}
}
