package beltmark.people;

/**
 * A crew.
 *
 * @param id above 0
 * @param name as it is shown
 */
public record Crew(long id, String name) {}
