/** The commands of the command line beside the server: they call the same core as the pages and print JSON. */
@NullMarked
package beltmark.cli;

import org.jspecify.annotations.NullMarked;
