/**
 * The arithmetic of setting up one sprung secondary cleaner: a hardware card and a situation go in, marks,
 * orientation, setting and sleeve exposure come out. Problems, field sign-off and the command line all call it.
 */
@NullMarked
package beltmark.core.setup;

import org.jspecify.annotations.NullMarked;
