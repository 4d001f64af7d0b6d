/**
 * The record book: an append-only ledger under all answers, results and sign-offs, linked by hashes.
 * An entry goes in as a Java record inside a change of the database; its number comes out, the same one when the same
 * operation is sent again. Features append; evidence pages and the command {@code verify} read.
 */
@NullMarked
package beltmark.recordbook;

import org.jspecify.annotations.NullMarked;
