package beltmark.web;

/**
 * One of several answers to choose from in a form.
 *
 * @param value what the form sends
 * @param label what the person reads
 */
public record Option(String value, String label) {}
