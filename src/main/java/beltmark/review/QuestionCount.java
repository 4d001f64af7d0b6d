package beltmark.review;

import beltmark.core.statistics.Proportion;

/**
 * How often a question was missed.
 *
 * @param question the id of the question
 * @param missed in how many of how many finished sittings
 */
record QuestionCount(String question, Proportion missed) {}
