package beltmark.signoff;

/**
 * What a signature says.
 *
 * @param sentence as shown
 * @param language the tag of the language it is shown in
 */
record Meaning(String sentence, String language) {}
