package beltmark.sheet;

import beltmark.web.Told;
import java.util.List;

/**
 * Figures that belong together.
 *
 * @param heading what they are about
 * @param lines the figures
 */
public record Group(String heading, List<Told> lines) {

    public Group {
        lines = List.copyOf(lines);
    }
}
