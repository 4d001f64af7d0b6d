package beltmark.board;

/**
 * A person on the board.
 *
 * @param id the person's number
 * @param name as it is shown
 * @param crewId the person's crew
 * @param crew its name
 */
public record Member(long id, String name, long crewId, String crew) {}
