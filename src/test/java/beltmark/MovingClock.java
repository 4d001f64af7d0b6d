package beltmark;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicLong;

/** A clock that stands still until it is moved. */
public final class MovingClock extends Clock {

    private static final Instant START = Instant.parse("2026-03-05T08:00:00Z");

    private final AtomicLong milliseconds = new AtomicLong(START.toEpochMilli());

    /** Moves on, or back. */
    public void move(Duration by) {
        milliseconds.addAndGet(by.toMillis());
    }

    @Override
    public Instant instant() {
        return Instant.ofEpochMilli(milliseconds.get());
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("the site has one zone");
    }
}
