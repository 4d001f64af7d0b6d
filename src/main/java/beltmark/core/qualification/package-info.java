/**
 * Who may do which job on which date: a rule and the facts about one person go in, a status with its reasons and the
 * next step comes out. The crew board asks here; rules come from content files, facts from the records.
 */
@NullMarked
package beltmark.core.qualification;

import org.jspecify.annotations.NullMarked;
