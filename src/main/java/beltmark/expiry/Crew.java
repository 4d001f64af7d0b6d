package beltmark.expiry;

/**
 * A crew.
 *
 * @param id its number
 * @param name its name
 */
public record Crew(long id, String name) {}
