package beltmark.cli;

import beltmark.texts.Words;

/**
 * Stands in place of the verdicts for answers that cannot be graded.
 *
 * @param document which of those read, from 1
 * @param refused the name of the fault
 * @param because the sentence for it
 */
record RefusedJson(long document, String refused, String because) {

    static RefusedJson of(long document, GradeRefused refused, Words words) {
        return new RefusedJson(document, refused.fault().name(), refused.sentence(words));
    }
}
