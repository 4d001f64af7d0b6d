@NullMarked
package beltmark.outbox;

import org.jspecify.annotations.NullMarked;
