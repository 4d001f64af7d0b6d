package beltmark.core.lockout;

import java.util.List;

/**
 * Where a question comes from.
 *
 * @param facts the rows of the fact list it rests on, for example {@code Q017}; at least one
 * @param paragraph the paragraph of the rule, as people look it up
 * @param ruleSets the rule sets under which the answer is true, at least one
 */
public record Source(List<String> facts, String paragraph, List<String> ruleSets) {

    /** Refuses a source without paragraph or rule set. */
    public Source {
        facts = List.copyOf(facts);
        ruleSets = List.copyOf(ruleSets);
        if (facts.isEmpty() || paragraph.isBlank() || ruleSets.isEmpty()) {
            throw new IllegalArgumentException("a source needs a fact, a paragraph and a rule set");
        }
    }
}
