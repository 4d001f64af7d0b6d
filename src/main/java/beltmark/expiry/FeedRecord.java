package beltmark.expiry;

/**
 * Body of the records {@code expiry.feed} and {@code expiry.revoked}.
 *
 * @param feed the number of the calendar
 * @param crew the number of the crew whose endings it shows
 */
record FeedRecord(long feed, long crew) {}
