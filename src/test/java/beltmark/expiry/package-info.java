@NullMarked
package beltmark.expiry;

import org.jspecify.annotations.NullMarked;
