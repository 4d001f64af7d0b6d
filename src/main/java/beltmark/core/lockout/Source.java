package beltmark.core.lockout;

import java.util.List;

/**
 * Where a question comes from.
 *
 * @param facts the rows of the fact list it rests on, for example {@code Q017}; at least one
 * @param paragraph the paragraph of the rule, as people look it up
 * @param ruleSets the rule sets under which the answer is true, at least one
 * @param mark how well the weakest of these facts is known
 * @param basis whether the paragraph says it, or it is good practice
 */
public record Source(List<String> facts, String paragraph, List<String> ruleSets, Mark mark, Basis basis) {

    /** Refuses a source without paragraph or rule set. */
    public Source {
        facts = List.copyOf(facts);
        ruleSets = List.copyOf(ruleSets);
        if (facts.isEmpty() || paragraph.isBlank() || ruleSets.isEmpty()) {
            throw new IllegalArgumentException("a source needs a fact, a paragraph and a rule set");
        }
    }

    /** A source whose paragraph was read and says it. */
    public Source(List<String> facts, String paragraph, List<String> ruleSets) {
        this(facts, paragraph, ruleSets, Mark.SAW, Basis.RULE);
    }
}
