/**
 * How a problem of the core is told and asked: its words, its fields, what was sent for them. Practice, papers, paper
 * packs, the preview and the command line all tell a problem through here.
 */
@NullMarked
package beltmark.problem;

import org.jspecify.annotations.NullMarked;
