package beltmark.procedure;

/**
 * Somebody who has passed a paper that asked about a version of a procedure.
 *
 * @param person the name
 * @param crew the crew
 * @param version the latest version that person was asked about
 */
record Holder(String person, String crew, int version) {}
