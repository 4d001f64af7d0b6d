package beltmark.analysis;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.csv.CSVRecord;

/**
 * Which line and column of a table of answers hold names in place of answers, as its first rows show it. The first line
 * is a header if more than half of what stands in it, the first cell aside, is no answer. The first column tells who a row is
 * if its heading is a usual word for that or at least half of its cells are no answers; fewer are taken for mistypings.
 *
 * @param hasHeader whether the first line is a header
 * @param hasId whether the first column tells who a row is
 */
record Layout(boolean hasHeader, boolean hasId) {

    private static final Set<String> ID_WORDS = Set.of(
            "",
            "#",
            "id",
            "no",
            "nr",
            "person",
            "people",
            "persona",
            "name",
            "nombre",
            "trainee",
            "worker",
            "employee",
            "candidate",
            "student",
            "examinee",
            "respondent",
            "participant",
            "user");

    static Layout of(List<CSVRecord> first) {
        CSVRecord top = first.get(0);
        boolean hasHeader = isHeader(top);
        List<CSVRecord> rows = first.subList(hasHeader ? 1 : 0, first.size());
        boolean named = hasHeader && ID_WORDS.contains(top.get(0).strip().toLowerCase(Locale.ROOT));
        long strange = rows.stream().filter(row -> !isAnswer(row.get(0))).count();
        return new Layout(hasHeader, named || (strange > 0 && 2 * strange >= rows.size()));
    }

    private static boolean isHeader(CSVRecord top) {
        int from = top.size() == 1 ? 0 : 1;
        List<String> cells =
                IntStream.range(from, top.size()).mapToObj(top::get).toList();
        long names = cells.stream().filter(cell -> !isAnswer(cell)).count();
        long blanks = cells.stream().filter(String::isBlank).count();
        return 2 * names > cells.size() - blanks;
    }

    private static boolean isAnswer(String cell) {
        String text = cell.strip();
        return text.isEmpty() || text.equals("0") || text.equals("1");
    }

    /** The column of the first item, from 0. */
    int firstItem() {
        return hasId ? 1 : 0;
    }
}
