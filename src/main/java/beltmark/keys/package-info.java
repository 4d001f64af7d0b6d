/**
 * The secrets of the server, one file each in a folder that nobody else can read; never in the database, a backup, the
 * log or the command line.
 */
@NullMarked
package beltmark.keys;

import org.jspecify.annotations.NullMarked;
