/**
 * The invented past year of the demo site: a file says who did what how many days ago, and it is done again through the
 * features' own verbs, with a clock set to that day. It runs once, before the server listens.
 */
@NullMarked
package beltmark.demo;

import org.jspecify.annotations.NullMarked;
