/**
 * The job check: a day, a piece of hardware and how many people of which qualification a job takes; out comes who could go,
 * who could not and what each lacks, and a crew. Reads only; the address carries all that was asked.
 */
@NullMarked
package beltmark.jobcheck;

import org.jspecify.annotations.NullMarked;
