/** Problems about the running belt: what it carries back, what the blade drags and wears, what energy waits in it. */
@NullMarked
package beltmark.core.problem.bank.running;

import org.jspecify.annotations.NullMarked;
