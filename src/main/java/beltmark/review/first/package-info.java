/**
 * What first attempts at a quiz show: totals come in, the findings on the test and on each question go out, and plots of
 * them. Each person counts once, so that intervals mean what they say. The review page shows it.
 */
@NullMarked
package beltmark.review.first;

import org.jspecify.annotations.NullMarked;
