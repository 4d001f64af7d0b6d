@NullMarked
package beltmark.core.problem.bank.running;

import org.jspecify.annotations.NullMarked;
