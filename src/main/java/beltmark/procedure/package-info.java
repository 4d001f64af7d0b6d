/**
 * The site's written energy-control procedures: entered and changed by the coordinator as versions that stay, read by
 * everybody. A new version makes those who hold the old one due.
 */
@NullMarked
package beltmark.procedure;

import org.jspecify.annotations.NullMarked;
