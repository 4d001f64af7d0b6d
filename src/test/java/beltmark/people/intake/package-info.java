@NullMarked
package beltmark.people.intake;

import org.jspecify.annotations.NullMarked;
