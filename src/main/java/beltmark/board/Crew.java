package beltmark.board;

/**
 * A crew to filter by.
 *
 * @param id its number
 * @param name its name
 */
public record Crew(long id, String name) {}
