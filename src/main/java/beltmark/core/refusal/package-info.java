/**
 * Why a calculation gives no result: a closed list of names, and the exception that carries one of them. Every
 * computation throws it for impossible input; pages and the command line turn the name into a sentence.
 */
@NullMarked
package beltmark.core.refusal;

import org.jspecify.annotations.NullMarked;
