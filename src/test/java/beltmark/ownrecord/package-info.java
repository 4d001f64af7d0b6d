@NullMarked
package beltmark.ownrecord;

import org.jspecify.annotations.NullMarked;
