@NullMarked
package beltmark.people.first;

import org.jspecify.annotations.NullMarked;
