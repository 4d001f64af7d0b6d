/** Hardware cards as pages; reads only. */
@NullMarked
package beltmark.hardware;

import org.jspecify.annotations.NullMarked;
