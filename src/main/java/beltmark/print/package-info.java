/**
 * Pages as PDF files: a page of a feature comes in, the finished file goes out. The page uses the layout {@code print}
 * instead of {@code page} and the style sheets of the class path folder {@code print}; nothing else is ever loaded.
 */
@NullMarked
package beltmark.print;

import org.jspecify.annotations.NullMarked;
