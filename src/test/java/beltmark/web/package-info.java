/** Tests of what pages share. */
@NullMarked
package beltmark.web;

import org.jspecify.annotations.NullMarked;
