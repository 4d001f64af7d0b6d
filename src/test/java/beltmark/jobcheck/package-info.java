@NullMarked
package beltmark.jobcheck;

import org.jspecify.annotations.NullMarked;
