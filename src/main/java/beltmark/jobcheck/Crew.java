package beltmark.jobcheck;

/**
 * A crew to look in.
 *
 * @param id its number
 * @param name its name
 */
public record Crew(long id, String name) {}
