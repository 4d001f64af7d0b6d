/**
 * The one SQLite file: its folder, its settings, its migrations, many readers and one writer.
 * A query or a change goes in as a function of a handle; its result comes out, that of a change once it is on the disk.
 * Features hand over their changes, stores hold the statements.
 */
@NullMarked
package beltmark.db;

import org.jspecify.annotations.NullMarked;
