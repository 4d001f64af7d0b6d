package beltmark.texts;

/**
 * A word of the trade, as one language says it.
 *
 * @param id its name in the text files, the same in all languages
 * @param word the word
 * @param means what it means, in a sentence
 * @param otherWord the word in another language
 * @param otherLanguage that language; the own one when there is no other
 */
public record Term(String id, String word, String means, String otherWord, Language otherLanguage) {}
