/** Tests of sign-in and settings, over HTTP. */
@NullMarked
package beltmark.people;

import org.jspecify.annotations.NullMarked;
