package beltmark.web;

/**
 * A language that pages can be had in before anybody is signed in.
 *
 * @param tag the language tag
 * @param name what it calls itself
 * @param address shows this page in it, and remembers the choice
 * @param shown whether this page is in it
 */
public record LanguageWay(String tag, String name, String address, boolean shown) {}
