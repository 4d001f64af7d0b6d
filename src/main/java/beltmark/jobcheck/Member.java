package beltmark.jobcheck;

/**
 * A person who may be sent to a job.
 *
 * @param id the person's number
 * @param name as it is shown
 * @param crew the name of the person's crew
 */
public record Member(long id, String name, String crew) {}
