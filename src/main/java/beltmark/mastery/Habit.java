package beltmark.mastery;

import beltmark.core.mastery.HabitState;

/**
 * A slip that somebody has made.
 *
 * @param family the family's id
 * @param part the part's id
 * @param slip the slip's id
 * @param state how often, of how many chances
 */
public record Habit(String family, String part, String slip, HabitState state) {}
