/**
 * Crews and people, their PINs, sign-in and sessions, and each person's own settings. Names and PINs come in from forms;
 * every other feature gets a {@link beltmark.web.Visitor}, and may ask for a PIN again.
 */
@NullMarked
package beltmark.people;

import org.jspecify.annotations.NullMarked;
