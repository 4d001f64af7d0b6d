/**
 * The coordinator's desk: retraining orders and what closes them, the inspections of written procedures, and the list of
 * who was trained when.
 */
@NullMarked
package beltmark.desk;

import org.jspecify.annotations.NullMarked;
