package beltmark.web;

/**
 * A value and what it is, as a line of a list.
 *
 * @param label what it is
 * @param value as the person reads it
 */
public record Told(String label, String value) {}
