package beltmark.expiry;

import java.time.Instant;

/**
 * A calendar that can be fetched.
 *
 * @param id its number
 * @param crewId whose endings it shows
 * @param language the tag of its language
 * @param madeBy the name of who made it
 * @param madeAt when
 */
public record Feed(long id, long crewId, String language, String madeBy, Instant madeAt) {}
