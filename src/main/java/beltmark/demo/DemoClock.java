package beltmark.demo;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;

/** A clock that stands at a moment of the past year, and moves on a little with every look. */
public final class DemoClock extends Clock {

    private static final Duration BETWEEN_LOOKS = Duration.ofSeconds(20);

    private final Clock real;
    private Instant now;

    /** @param real the clock of the site, whose present moment the days are counted back from */
    public DemoClock(Clock real) {
        this.real = real;
        this.now = real.instant();
    }

    void setDaysAgo(int days) {
        now = real.instant().minus(Duration.ofDays(days));
    }

    @Override
    public Instant instant() {
        now = now.plus(BETWEEN_LOOKS);
        return now;
    }

    @Override
    public ZoneId getZone() {
        return real.getZone();
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return new DemoClock(real.withZone(zone));
    }
}
