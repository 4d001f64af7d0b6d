@NullMarked
package beltmark.core.problem.bank.job;

import org.jspecify.annotations.NullMarked;
