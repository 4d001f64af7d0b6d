/** Problems about the job as a whole: its order, locking out, and the faults that show after start-up. */
@NullMarked
package beltmark.core.problem.bank.job;

import org.jspecify.annotations.NullMarked;
