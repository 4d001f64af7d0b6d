/**
 * What an admin changes about people over time: crew, roles, leaving and coming back. Each change is a record with the day
 * it holds from; earlier days keep their answer.
 */
@NullMarked
package beltmark.people.staff;

import org.jspecify.annotations.NullMarked;
