package beltmark.web;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.TimeoutException;

/**
 * So many tries from one network address within a time, so that one device cannot try everybody's PIN. Tries are counted
 * before they are made; one that did no harm is given back. Addresses are forgotten, the longest idle one first, when too
 * many of them are known: whoever has that many can only be met before this server.
 */
public final class AddressLimit {

    private static final int MOST_ADDRESSES = 10_000;

    private final Clock clock;
    private final int most;
    private final Duration within;
    private final Map<String, Deque<Instant>> tries = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Deque<Instant>> eldest) {
            return size() > MOST_ADDRESSES;
        }
    };

    /**
     * @param clock the time
     * @param most how many tries there are
     * @param within the time in which
     */
    public AddressLimit(Clock clock, int most, Duration within) {
        this.clock = clock;
        this.most = most;
        this.within = within;
    }

    /** Counts a try; throws {@link TooBusy} when there have been too many. */
    public synchronized void take(String address) {
        Instant now = clock.instant();
        Deque<Instant> counted = tries.computeIfAbsent(address, unknown -> new ArrayDeque<>(most));
        // a clock that was set back must not keep an address out for good
        counted.removeIf(at -> at.isAfter(now) || !at.plus(within).isAfter(now));
        if (counted.size() >= most) {
            throw new TooBusy("tries from one address", new TimeoutException());
        }
        counted.addLast(now);
    }

    /** Takes back the last try that was counted. */
    public synchronized void giveBack(String address) {
        Deque<Instant> counted = tries.get(address);
        if (counted != null) {
            counted.pollLast();
        }
    }
}
