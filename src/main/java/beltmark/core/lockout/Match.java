package beltmark.core.lockout;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What a match asks for: each row gets one target of every column. A pair is written {@code row=target}; pairs are the
 * options of the question, so that an answer is the set of pairs marked.
 *
 * @param rows the ids of the rows, at least 2
 * @param columns the ids of the targets of each column, at least one column and 2 targets in each
 */
public record Match(List<String> rows, List<List<String>> columns) {

    private static final String PAIRED = "=";

    /** Refuses fewer than two rows or targets, and a target that is in two columns. */
    public Match {
        rows = List.copyOf(rows);
        columns = columns.stream().map(List::copyOf).toList();
        List<String> targets = columns.stream().flatMap(List::stream).toList();
        if (rows.size() < 2 || columns.isEmpty() || columns.stream().anyMatch(column -> column.size() < 2)) {
            throw new IllegalArgumentException("a match has at least two rows and two targets in each column");
        }
        if (Set.copyOf(targets).size() < targets.size()) {
            throw new IllegalArgumentException("a match names a target twice: " + targets);
        }
    }

    /** {@return the id of a pair} */
    public static String pair(String row, String target) {
        return row + PAIRED + target;
    }

    /** {@return the row and the target of a pair; one of them alone for anything that is no pair} */
    public static List<String> parts(String pair) {
        return Arrays.asList(pair.split(PAIRED, 2));
    }

    /** {@return every pair there can be, row by row} */
    public List<String> pairs() {
        return cells().stream().flatMap(List::stream).toList();
    }

    /** {@return the pairs of each row with each column; exactly one of every list belongs to an answer} */
    public List<List<String>> cells() {
        List<List<String>> cells = new ArrayList<>();
        for (String row : rows) {
            columns.forEach(column ->
                    cells.add(column.stream().map(target -> pair(row, target)).toList()));
        }
        return cells;
    }

    /** {@return whether these pairs give every row one target of every column} */
    boolean isAnsweredBy(List<String> pairs) {
        return pairs.size() == rows.size() * columns.size()
                && cells().stream()
                        .allMatch(cell -> cell.stream().filter(pairs::contains).count() == 1);
    }

    /**
     * The same match with rows and targets in the order in which they first come up in a list of pairs, so that the
     * order of the pairs in a sitting is the order on its page.
     *
     * @param shown every pair once
     * @return the match in that order
     */
    public Match inOrderOf(List<String> shown) {
        Set<String> rowsShown = new LinkedHashSet<>();
        Set<String> targetsShown = new LinkedHashSet<>();
        for (String pair : shown) {
            rowsShown.add(parts(pair).get(0));
            targetsShown.add(parts(pair).get(1));
        }
        return new Match(
                List.copyOf(rowsShown),
                columns.stream()
                        .map(column ->
                                targetsShown.stream().filter(column::contains).toList())
                        .toList());
    }
}
