@NullMarked
package beltmark.bank;

import org.jspecify.annotations.NullMarked;
