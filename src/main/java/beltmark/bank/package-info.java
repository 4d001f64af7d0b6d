/**
 * The coordinator's control of the question bank: which rule sets the site works under, which weak sources are confirmed,
 * which questions are retired. Each is a record; the lockout quiz reads them when it draws a paper.
 */
@NullMarked
package beltmark.bank;

import org.jspecify.annotations.NullMarked;
