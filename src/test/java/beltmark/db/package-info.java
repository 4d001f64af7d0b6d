/** Tests of the database. */
@NullMarked
package beltmark.db;

import org.jspecify.annotations.NullMarked;
