package beltmark.lockout;

import beltmark.core.lockout.Quiz;
import org.jspecify.annotations.Nullable;

/**
 * A paper that can be sat.
 *
 * @param id the id of the quiz
 * @param example a paper as it could be drawn now, to tell its size; null when there are too few questions
 * @param waiting the sitting that waits to be finished, if there is one
 */
record Offer(String id, @Nullable Quiz example, @Nullable Sitting waiting) {}
