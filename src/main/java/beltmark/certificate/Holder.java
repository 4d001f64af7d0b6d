package beltmark.certificate;

/**
 * Somebody who may have certificates.
 *
 * @param id the person
 * @param name as it is shown
 * @param crewId the crew
 */
public record Holder(long id, String name, long crewId) {}
