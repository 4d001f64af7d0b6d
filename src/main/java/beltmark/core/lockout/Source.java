package beltmark.core.lockout;

import java.util.List;

/**
 * Where a question comes from.
 *
 * @param fact the row of the fact list, for example {@code Q017}
 * @param paragraph the paragraph of the rule, as people look it up
 * @param ruleSets the rule sets under which the answer is true, at least one
 */
public record Source(String fact, String paragraph, List<String> ruleSets) {

    /** Refuses a source without paragraph or rule set. */
    public Source {
        ruleSets = List.copyOf(ruleSets);
        if (fact.isBlank() || paragraph.isBlank() || ruleSets.isEmpty()) {
            throw new IllegalArgumentException("a source needs a fact, a paragraph and a rule set");
        }
    }
}
