package beltmark.review;

/**
 * A crew to choose.
 *
 * @param id the crew
 * @param name its name
 */
record CrewName(long id, String name) {}
