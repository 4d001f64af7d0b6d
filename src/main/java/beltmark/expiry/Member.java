package beltmark.expiry;

/**
 * A person with a crew.
 *
 * @param id the person's number
 * @param name as it is shown
 * @param crew the name of the crew
 */
public record Member(long id, String name, String crew) {}
