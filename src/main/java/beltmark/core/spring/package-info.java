/**
 * Helical compression springs: dimensions go in, rate and limits come out. Hardware cards hold one spring.
 */
@NullMarked
package beltmark.core.spring;

import org.jspecify.annotations.NullMarked;
