/** Tests of the command line. */
@NullMarked
package beltmark.cli;

import org.jspecify.annotations.NullMarked;
