/**
 * Everything the record book holds of a person, as files for that person: what they did and what was decided of them.
 */
@NullMarked
package beltmark.ownrecord;

import org.jspecify.annotations.NullMarked;
