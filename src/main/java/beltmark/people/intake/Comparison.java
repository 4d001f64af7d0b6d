package beltmark.people.intake;

import beltmark.people.intake.IntakeStore.Known;
import beltmark.people.intake.Preview.Fate;
import beltmark.people.intake.RowFault.Kind;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Compares the rows of a roster with each other and with who is there. */
final class Comparison {

    private final Map<String, String> crews = new HashMap<>();
    private final Map<String, Known> known = new HashMap<>();
    private final Map<String, String> crewOfName = new HashMap<>();
    private final Map<String, Long> lineOfKey = new HashMap<>();
    private final Map<String, String> newCrews = new LinkedHashMap<>();

    Comparison(List<String> crews, List<Known> people) {
        crews.forEach(crew -> this.crews.put(RosterRow.folded(crew), crew));
        people.forEach(person -> {
            known.put(RosterRow.key(person.name(), person.crew()), person);
            if (person.here()) {
                crewOfName.put(RosterRow.folded(person.name()), person.crew());
            }
        });
    }

    Preview preview(List<RosterRow> rows) {
        List<Preview.Line> lines = rows.stream().map(this::line).toList();
        return new Preview(lines, List.copyOf(newCrews.values()));
    }

    private Preview.Line line(RosterRow read) {
        List<RowFault> faults = new ArrayList<>(read.faults());
        Known there = known.get(read.key());
        if (there != null && !there.here()) {
            faults.add(RowFault.of(Kind.GONE));
        }
        Long earlier = lineOfKey.putIfAbsent(read.key(), read.line());
        if (earlier != null && !read.newcomer().name().isEmpty()) {
            faults.add(new RowFault(Kind.TWICE, Long.toString(earlier)));
        }
        RosterRow row = new RosterRow(read.line(), read.newcomer(), crew(read), read.since(), faults);
        if (!faults.isEmpty()) {
            return new Preview.Line(row, Fate.FAULTY, "");
        }
        if (there != null) {
            return new Preview.Line(row, Fate.THERE, "");
        }
        noteNewCrew(row);
        return new Preview.Line(
                row,
                Fate.NEW,
                crewOfName.getOrDefault(RosterRow.folded(row.newcomer().name()), ""));
    }

    /** {@return the crew as it is written where it was first met} */
    private String crew(RosterRow row) {
        String folded = RosterRow.folded(row.crew());
        return crews.getOrDefault(folded, newCrews.getOrDefault(folded, row.crew()));
    }

    private void noteNewCrew(RosterRow row) {
        String folded = RosterRow.folded(row.crew());
        if (!crews.containsKey(folded)) {
            newCrews.putIfAbsent(folded, row.crew());
        }
    }
}
