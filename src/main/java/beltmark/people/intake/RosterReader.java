package beltmark.people.intake;

import beltmark.core.units.Graduation;
import beltmark.people.Newcomer;
import beltmark.people.SettingsPage;
import beltmark.people.intake.RosterFile.Line;
import beltmark.people.intake.RowFault.Kind;
import beltmark.texts.Language;
import beltmark.texts.Words;
import beltmark.web.Role;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads the rows of a roster. Words may be those of the reader's language or the ones that stay the same in all of them.
 *
 * @param words the texts of the reader
 * @param languages the languages there are
 * @param today the day at the site
 */
record RosterReader(Words words, Set<Language> languages, LocalDate today) {

    /** As many as get their PINs while a browser waits. */
    static final int MOST_ROWS = 200;

    private static final int LONGEST_NAME = 80;
    private static final int LONGEST_CREW = 60;
    private static final Map<String, Graduation> SHORT_LENGTHS = Map.of(
            "1/16", Graduation.SIXTEENTH_INCH, "1/32", Graduation.THIRTY_SECOND_INCH, "mm", Graduation.MILLIMETRE);

    RosterReader {
        languages = Set.copyOf(languages);
    }

    /** {@return the rows, or why there are none} */
    Roster read(String text) {
        List<Line> lines;
        try {
            lines = RosterFile.read(text);
        } catch (IllegalArgumentException e) {
            return Roster.refused(Roster.Fault.NOT_ROWS, "");
        }
        if (lines.size() < 2) {
            return Roster.refused(Roster.Fault.NO_ROWS, "");
        }
        if (lines.size() > MOST_ROWS + 1) {
            return Roster.refused(Roster.Fault.TOO_MANY_ROWS, Integer.toString(MOST_ROWS));
        }
        Map<RosterColumn, Integer> columns = columns(lines.get(0).cells());
        for (RosterColumn column : RosterColumn.values()) {
            if (column.isRequired() && !columns.containsKey(column)) {
                return Roster.refused(Roster.Fault.NO_COLUMN, column.word());
            }
        }
        return Roster.of(lines.stream().skip(1).map(line -> row(line, columns)).toList());
    }

    private Map<RosterColumn, Integer> columns(List<String> header) {
        Map<RosterColumn, Integer> columns = new EnumMap<>(RosterColumn.class);
        for (RosterColumn column : RosterColumn.values()) {
            String own = words.say("intake.column." + column.word());
            for (int i = header.size() - 1; i >= 0; i--) {
                if (header.get(i).equalsIgnoreCase(column.word())
                        || header.get(i).equalsIgnoreCase(own)) {
                    columns.put(column, i);
                }
            }
        }
        return columns;
    }

    private RosterRow row(Line line, Map<RosterColumn, Integer> columns) {
        Map<RosterColumn, String> cells = new EnumMap<>(RosterColumn.class);
        columns.forEach((column, at) ->
                cells.put(column, at < line.cells().size() ? line.cells().get(at) : ""));
        List<RowFault> faults = new ArrayList<>();
        String name = cells.getOrDefault(RosterColumn.NAME, "");
        String crew = cells.getOrDefault(RosterColumn.CREW, "");
        checkText(name, LONGEST_NAME, Kind.NO_NAME, Kind.LONG_NAME, faults);
        checkText(crew, LONGEST_CREW, Kind.NO_CREW, Kind.LONG_CREW, faults);
        Newcomer newcomer = new Newcomer(
                name,
                roles(cells.getOrDefault(RosterColumn.ROLES, ""), faults),
                language(cells.getOrDefault(RosterColumn.LANGUAGE, ""), faults),
                lengths(cells.getOrDefault(RosterColumn.LENGTHS, ""), faults));
        LocalDate since = since(cells.getOrDefault(RosterColumn.SINCE, ""), faults);
        return new RosterRow(line.line(), newcomer, crew, since, faults);
    }

    private static void checkText(String text, int longest, Kind none, Kind tooLong, List<RowFault> faults) {
        if (text.isEmpty()) {
            faults.add(RowFault.of(none));
        } else if (text.length() > longest) {
            faults.add(new RowFault(tooLong, Integer.toString(longest)));
        }
    }

    private Set<Role> roles(String cell, List<RowFault> faults) {
        if (cell.isEmpty()) {
            return Set.of(Role.NEW_HIRE);
        }
        Map<String, Role> known = new HashMap<>();
        Role.ofPeople().forEach(role -> {
            known.put(role.word(), role);
            known.put(lower(words.say("people.role." + role.word())), role);
        });
        Set<Role> roles = new TreeSet<>();
        Role whole = known.get(lower(cell));
        for (String typed : whole == null ? cell.split("[,;/+]| and | y ", -1) : new String[] {cell}) {
            Role role = known.get(lower(typed.strip()));
            if (role == null) {
                faults.add(new RowFault(Kind.UNKNOWN_ROLE, typed.strip()));
            } else {
                roles.add(role);
            }
        }
        return roles;
    }

    private Language language(String cell, List<RowFault> faults) {
        if (cell.isEmpty()) {
            return words.language();
        }
        Optional<Language> language = languages.stream()
                .filter(offered -> offered.tag().equalsIgnoreCase(cell)
                        || offered.ownName().equalsIgnoreCase(cell))
                .findFirst();
        if (language.isEmpty()) {
            faults.add(new RowFault(Kind.UNKNOWN_LANGUAGE, cell));
        }
        return language.orElse(words.language());
    }

    private Graduation lengths(String cell, List<RowFault> faults) {
        if (cell.isEmpty()) {
            return words.graduation();
        }
        Map<String, Graduation> known = new HashMap<>(SHORT_LENGTHS);
        SettingsPage.GRADUATIONS.forEach(graduation -> known.put(SettingsPage.word(graduation), graduation));
        Graduation graduation = known.get(lower(cell));
        if (graduation == null) {
            faults.add(new RowFault(Kind.UNKNOWN_LENGTHS, cell));
            return words.graduation();
        }
        return graduation;
    }

    private LocalDate since(String cell, List<RowFault> faults) {
        if (cell.isEmpty()) {
            return today;
        }
        try {
            LocalDate since = LocalDate.parse(cell);
            if (since.isAfter(today)) {
                faults.add(new RowFault(Kind.FUTURE_DAY, cell));
            }
            return since;
        } catch (DateTimeParseException e) {
            faults.add(new RowFault(Kind.NO_DAY, cell));
            return today;
        }
    }

    private static String lower(String text) {
        return text.toLowerCase(Locale.ROOT);
    }
}
