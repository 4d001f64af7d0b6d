package beltmark.people.intake;

import java.util.List;
import java.util.Locale;

/**
 * A roster compared with who is there: what would be stored.
 *
 * @param lines its rows, each with what becomes of it
 * @param newCrews the names of crews that there are not yet
 */
public record Preview(List<Line> lines, List<String> newCrews) {

    public Preview {
        lines = List.copyOf(lines);
        newCrews = List.copyOf(newCrews);
    }

    /** What becomes of a row. */
    public enum Fate {
        /** The person is put on the site. */
        NEW,
        /** The person is there already; nothing changes. */
        THERE,
        /** Something is wrong, and nothing of the roster is stored. */
        FAULTY;

        /** {@return the word in texts and style sheet} */
        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /**
     * A row with what becomes of it.
     *
     * @param row as it was read, faults included
     * @param fate what becomes of it
     * @param otherCrew the crew in which somebody else of that name is, empty when there is none
     */
    public record Line(RosterRow row, Fate fate, String otherCrew) {}

    /** {@return whether the roster can be stored: nothing is wrong, and somebody is new} */
    public boolean isStorable() {
        return lines.stream().noneMatch(line -> line.fate() == Fate.FAULTY) && count(Fate.NEW) > 0;
    }

    /** {@return how many rows have that fate} */
    public int count(Fate fate) {
        return (int) lines.stream().filter(line -> line.fate() == fate).count();
    }

    /** {@return the rows of those who are new} */
    public List<RosterRow> newRows() {
        return lines.stream()
                .filter(line -> line.fate() == Fate.NEW)
                .map(Line::row)
                .toList();
    }
}
