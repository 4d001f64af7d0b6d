package beltmark.review;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The lockout review: people, critical misses, the quiz as a measurement, its questions.
 *
 * @param view what all pages share
 * @param filter what is chosen, and what can be
 * @param summary how many of how many people passed
 * @param people where each person stands
 * @param critical the critical questions missed, the latest first
 * @param test the figures of the quiz as a measurement, none if nobody sat it
 * @param scores how many people had each score, with its plot; null if too few people sat it
 * @param questions what was missed, most missed first
 * @param questionPlot the plot of the first of these, empty if none may be told
 */
public record ReviewPage(
        View view,
        Filter filter,
        String summary,
        People people,
        List<CriticalRow> critical,
        List<Fact> test,
        @Nullable ScorePlot scores,
        List<QuestionRow> questions,
        Plot questionPlot)
        implements Page {

    /**
     * What is chosen, and what can be.
     *
     * @param export where the sittings are had as a file
     * @param papers the papers
     * @param crews the crews
     * @param from the months as the first one
     * @param to the months as the last one
     */
    public record Filter(String export, List<Choice> papers, List<Choice> crews, List<Choice> from, List<Choice> to) {}

    /**
     * One to choose.
     *
     * @param value what is sent
     * @param name what is read
     * @param chosen whether it is chosen
     */
    public record Choice(String value, String name, boolean chosen) {}

    /**
     * A page of people.
     *
     * @param rows the people
     * @param which which of how many they are, empty if they are all
     * @param before where those before them are, empty if there are none
     * @param after where those after them are, empty if there are none
     */
    public record People(List<PersonRow> rows, String which, String before, String after) {}

    /**
     * A person.
     *
     * @param name the person's name
     * @param crew the name of the crew
     * @param kind {@code passed}, {@code not-passed}, {@code open} or {@code not-taken}
     * @param status that in words
     * @param passedOn the day of the last pass, empty if never
     * @param age how long ago that was, empty if never
     * @param critical how many critical questions were ever missed, empty if none
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
            String critical,
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

    /**
     * A figure of the quiz as a measurement.
     *
     * @param name what it is
     * @param value the figure with its interval, or why there is none
     */
    public record Fact(String name, String value) {}

    /**
     * A plot.
     *
     * @param inside what belongs into its SVG element, empty if there is nothing to plot
     * @param viewBox the view box of that
     */
    public record Plot(String inside, String viewBox) {}

    /**
     * How many people had each score.
     *
     * @param plot the plot
     * @param rows the scores that occur
     */
    public record ScorePlot(Plot plot, List<ScoreRow> rows) {}

    /**
     * How many people had a score.
     *
     * @param score the score
     * @param people how many people
     */
    public record ScoreRow(int score, long people) {}

    /**
     * A question.
     *
     * @param number its number in the table and in the plot
     * @param name what it is about
     * @param critical whether it is critical
     * @param right how many of how many had it right
     * @param share the share with its 95 % interval, or why there is none
     * @param belief the most frequent miss and how frequent it is, empty if none
     * @param correlation corrected r with its interval, or why there is none
     * @param flags why it should be looked at
     */
    public record QuestionRow(
            int number,
            String name,
            boolean critical,
            String right,
            String share,
            String belief,
            String correlation,
            List<String> flags) {}
}
