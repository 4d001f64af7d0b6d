package beltmark.lockout;

import java.util.Arrays;
import java.util.List;

/** A short list of ids in one column, with blanks between; ids have none themselves. */
final class Ids {

    private static final String BLANK = " ";

    private Ids() {}

    static String join(List<String> ids) {
        return String.join(BLANK, ids);
    }

    static List<String> split(String column) {
        return column.isEmpty() ? List.of() : Arrays.asList(column.split(BLANK, -1));
    }
}
