package beltmark.board;

/**
 * A cell of the board.
 *
 * @param column which column
 * @param state what it says
 * @param word that in words
 * @param day since when, or until when; empty when there is nothing to date
 */
public record Cell(Column column, State state, String word, String day) {}
