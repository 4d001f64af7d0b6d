/**
 * The crew board: people and what they have passed, read from the records of all features, each cell with the records
 * behind it. Reads only; where a person stands is judged by the core.
 */
@NullMarked
package beltmark.board;

import org.jspecify.annotations.NullMarked;
