package beltmark.review;

import beltmark.core.statistics.Interval;
import beltmark.core.statistics.Measure;
import beltmark.core.statistics.Proportion;
import beltmark.core.statistics.Undefined;
import beltmark.web.View;

/** Says shares: the bare count of a small group, from 10 on the 95 % interval too. */
record Shares(View view) {

    private static final int PERCENT = 100;

    String count(Proportion proportion) {
        return view.text("review.page.of", "hits", proportion.hits(), "trials", proportion.trials());
    }

    /** The interval, or why there is none. */
    String interval(Proportion proportion, boolean told) {
        if (!proportion.isLargeEnough()) {
            return view.text("review.page.too-few", "least", Proportion.SMALLEST_GROUP);
        }
        return told ? proportion.wilson95().map(this::say).orElse("") : view.text("review.page.held-back");
    }

    String withInterval(Proportion proportion, boolean told) {
        return view.text(
                "review.page.of-with-interval",
                "hits",
                proportion.hits(),
                "trials",
                proportion.trials(),
                "interval",
                interval(proportion, told));
    }

    private String say(Interval interval) {
        return view.text("review.page.interval", "low", percent(interval.low()), "high", percent(interval.high()));
    }

    static long percent(double share) {
        return Math.round(PERCENT * share);
    }

    /** That it cannot be computed, and why. */
    String notComputable(Measure measure) {
        Undefined why = measure.undefined();
        return why == null
                ? ""
                : view.text("review.page.not-computable", "why", view.text("review.undefined." + why.id()));
    }
}
