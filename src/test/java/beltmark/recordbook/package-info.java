/** Tests of the record book. */
@NullMarked
package beltmark.recordbook;

import org.jspecify.annotations.NullMarked;
