package beltmark.signoff;

/**
 * A person whose set-up may be signed off.
 *
 * @param id the person's number
 * @param name as it is shown
 * @param crewId the person's crew
 */
public record Fitter(long id, String name, long crewId) {}
