package beltmark.review;

import java.time.Instant;

/**
 * A critical question that a person missed.
 *
 * @param person the person's name
 * @param crew the name of the crew
 * @param question the id of the question
 * @param times in how many sittings
 * @param lastSitting the last of them
 * @param lastAt when that was finished
 */
record CriticalMiss(String person, String crew, String question, long times, long lastSitting, Instant lastAt) {}
