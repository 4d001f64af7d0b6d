package beltmark.practice;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * Every family and where a person stands with it.
 *
 * @param view what all pages share
 * @param lines the families, in the order in which they are taught
 */
public record SkillsPage(View view, List<SkillLine> lines) implements Page {

    public SkillsPage {
        lines = List.copyOf(lines);
    }

    /** {@return how many are mastered} */
    public long mastered() {
        return lines.stream().filter(SkillLine::mastered).count();
    }
}
