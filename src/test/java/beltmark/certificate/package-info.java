@NullMarked
package beltmark.certificate;

import org.jspecify.annotations.NullMarked;
