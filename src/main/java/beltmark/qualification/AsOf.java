package beltmark.qualification;

import beltmark.web.Form;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;

/**
 * The day a page is of, and whose knowledge it shows: what was known at the end of that day, or all that is known by now
 * of what had happened up to it. For today and later days the two are the same.
 *
 * @param on the day
 * @param today the day at the site
 * @param byNow whether what was told later is counted in
 */
public record AsOf(LocalDate on, LocalDate today, boolean byNow) {

    /** Later than any record. Not the present moment: a clock that was set back must not hide the latest records. */
    public static final Instant EVERYTHING = Instant.parse("9999-12-31T00:00:00Z");

    private static final LocalDate FIRST = LocalDate.of(2000, 1, 1);
    private static final int MOST_YEARS_AHEAD = 10;
    private static final String NOW = "now";

    /** {@return today} */
    public static AsOf today(LocalDate today) {
        return new AsOf(today, today, false);
    }

    /** {@return what an address says: {@code on} a day, {@code known} then or now; today when it names no usable day} */
    public static AsOf of(Form address, LocalDate today) {
        return new AsOf(
                day(address.text("on"), today), today, address.text("known").equals(NOW));
    }

    /** {@return the day that was typed, if it is one within reach; else today} */
    public static LocalDate day(String typed, LocalDate today) {
        try {
            LocalDate day = LocalDate.parse(typed);
            boolean within = !day.isBefore(FIRST) && !day.isAfter(today.plusYears(MOST_YEARS_AHEAD));
            return within ? day : today;
        } catch (DateTimeParseException e) {
            return today;
        }
    }

    /** {@return whether it is another day than today} */
    public boolean isOtherDay() {
        return !on.equals(today);
    }

    /** {@return whether the day has gone by, so that it matters whose knowledge is asked for} */
    public boolean isPast() {
        return on.isBefore(today);
    }

    /** {@return the moment whose knowledge is asked for} */
    public Instant knownAt(ZoneId zone) {
        return isPast() && !byNow ? end(zone) : EVERYTHING;
    }

    /** {@return the last millisecond of the day} */
    public Instant end(ZoneId zone) {
        return on.plusDays(1).atStartOfDay(zone).toInstant().minusMillis(1);
    }

    /** {@return what carries it along in an address, empty for today, else beginning with a question mark} */
    public String query() {
        if (!isOtherDay()) {
            return "";
        }
        return "?on=" + on + (isPast() && byNow ? "&known=" + NOW : "");
    }
}
