@NullMarked
package beltmark.glossary;

import org.jspecify.annotations.NullMarked;
