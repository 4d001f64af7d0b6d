@NullMarked
package beltmark.people.staff;

import org.jspecify.annotations.NullMarked;
