package beltmark.review.first;

import beltmark.core.statistics.Interval;
import beltmark.core.statistics.Scores;
import beltmark.texts.Words;
import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.knowm.xchart.CategoryChart;
import org.knowm.xchart.CategoryChartBuilder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import org.knowm.xchart.style.AxesChartStyler;
import org.knowm.xchart.style.Styler;
import org.knowm.xchart.style.markers.Marker;
import org.knowm.xchart.style.markers.SeriesMarkers;

/**
 * Plots of the findings. They are read without colour: light against dark, marks of different shape. A table beside each
 * has the same figures.
 */
public record Plots(Words words) {

    /** A plot of more lines than these cannot be read; the table has all questions. */
    public static final int MOST_QUESTIONS = 20;

    /** The height of the plot of scores. */
    public static final int SCORES_HEIGHT = 280;

    private static final int WIDTH = 460;
    private static final int AROUND = 130;
    private static final String WITHOUT_SIGN = "0; 0";
    private static final int EACH = 22;
    private static final int PERCENT = 100;
    private static final Color INK = new Color(0x26, 0x2a, 0x2d);
    private static final Color PALE = new Color(0xc9, 0xcd, 0xcf);

    /** {@return how many people had each score, those below the least that passes in a paler shade} */
    public String scores(Scores scores, int needed) {
        CategoryChart chart = new CategoryChartBuilder()
                .width(WIDTH)
                .height(SCORES_HEIGHT)
                .xAxisTitle(words.say("review.plot.score"))
                .yAxisTitle(words.say("review.plot.people"))
                .build();
        List<Integer> all = IntStream.rangeClosed(0, scores.items()).boxed().toList();
        chart.addSeries(words.say("review.plot.below"), all, people(scores, 0, needed - 1))
                .setFillColor(PALE);
        chart.addSeries(words.say("review.plot.reached"), all, people(scores, needed, scores.items()))
                .setFillColor(INK);
        chart.getStyler().setOverlapped(true).setAvailableSpaceFill(0.8);
        dress(chart.getStyler());
        return Svg.of(chart);
    }

    private static List<Long> people(Scores scores, int from, int to) {
        return IntStream.rangeClosed(0, scores.items())
                .mapToObj(score -> score < from || score > to ? 0L : scores.at(score))
                .toList();
    }

    /** {@return the share of each question with its interval, by its number in the table; empty if none may be told} */
    public String questions(List<QuestionFindings> questions) {
        List<Double> ends = new ArrayList<>();
        List<Double> heights = new ArrayList<>();
        Points usual = new Points();
        Points flagged = new Points();
        for (int i = 0; i < shown(questions); i++) {
            QuestionFindings question = questions.get(i);
            double height = -1.0 - i;
            question.interval().ifPresent(interval -> {
                addLine(ends, heights, interval, height);
                (question.flags().isEmpty() ? usual : flagged)
                        .add(question.right().share().orElseThrow(), height);
            });
        }
        return ends.isEmpty() ? "" : chart(shown(questions), ends, heights, usual, flagged);
    }

    /** A gap after each line, so that it is not joined to the next. */
    private static void addLine(List<Double> ends, List<Double> heights, Interval interval, double height) {
        ends.addAll(List.of(PERCENT * interval.low(), PERCENT * interval.high(), PERCENT * interval.high()));
        heights.addAll(List.of(height, height, Double.NaN));
    }

    private String chart(int count, List<Double> ends, List<Double> heights, Points usual, Points flagged) {
        XYChart chart = new XYChartBuilder()
                .width(WIDTH)
                .height(AROUND + EACH * count)
                .xAxisTitle(words.say("review.plot.share"))
                .yAxisTitle(words.say("review.plot.question"))
                .build();
        XYSeries lines = chart.addSeries(words.say("review.plot.interval"), ends, heights);
        lines.setMarker(SeriesMarkers.NONE).setLineColor(INK).setLineStyle(new BasicStroke(2));
        usual.addTo(chart, words.say("review.plot.right"), SeriesMarkers.CIRCLE);
        flagged.addTo(chart, words.say("review.plot.flagged"), SeriesMarkers.DIAMOND);
        chart.getStyler().setXAxisMin(0.0).setXAxisMax((double) PERCENT);
        // the first in the table is the topmost here
        chart.getStyler().setYAxisMin(-count - 0.8).setYAxisMax(-0.2).setYAxisDecimalPattern(WITHOUT_SIGN);
        chart.getStyler().setYAxisTickMarkSpacingHint(EACH);
        chart.getStyler().setMarkerSize(9);
        dress(chart.getStyler());
        return Svg.of(chart);
    }

    private static int shown(List<QuestionFindings> questions) {
        return Math.min(MOST_QUESTIONS, questions.size());
    }

    /** {@return the height of the plot of these questions} */
    public static int questionsHeight(List<QuestionFindings> questions) {
        return AROUND + EACH * shown(questions);
    }

    /** {@return the view box of a plot of that height} */
    public static String viewBox(int height) {
        return "0 0 " + WIDTH + " " + height;
    }

    private static void dress(AxesChartStyler styler) {
        styler.setChartBackgroundColor(Color.WHITE)
                .setPlotBorderVisible(false)
                .setLegendPosition(Styler.LegendPosition.OutsideS)
                .setLegendLayout(Styler.LegendLayout.Horizontal)
                .setLegendBorderColor(Color.WHITE)
                .setChartFontColor(INK)
                .setBaseFont(Svg.FONT);
        styler.setAxisTitleFont(Svg.FONT.deriveFont(Font.PLAIN, 13f));
        styler.setAxisTickLabelsFont(Svg.FONT.deriveFont(Font.PLAIN, 12f));
        styler.setLegendFont(Svg.FONT.deriveFont(Font.PLAIN, 13f));
        styler.setAxisTickLabelsColor(INK);
    }

    /** Points of one kind of mark. */
    private static final class Points {

        private final List<Double> shares = new ArrayList<>();
        private final List<Double> heights = new ArrayList<>();

        void add(double share, double height) {
            shares.add(PERCENT * share);
            heights.add(height);
        }

        void addTo(XYChart chart, String name, Marker marker) {
            if (!shares.isEmpty()) {
                XYSeries points = chart.addSeries(name, shares, heights);
                points.setXYSeriesRenderStyle(XYSeries.XYSeriesRenderStyle.Scatter);
                points.setMarker(marker).setMarkerColor(INK);
            }
        }
    }
}
