package beltmark.people.intake;

import beltmark.people.Newcomer;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;

/**
 * A row as it was read.
 *
 * @param line the number of its line
 * @param newcomer who
 * @param crew the name of the crew, as written
 * @param since the first day in it
 * @param faults what is wrong, empty when nothing is
 */
public record RosterRow(long line, Newcomer newcomer, String crew, LocalDate since, List<RowFault> faults) {

    public RosterRow {
        faults = List.copyOf(faults);
    }

    /** {@return what makes two rows the same person: name and crew, whatever capitals and accents they are typed with} */
    String key() {
        return key(newcomer.name(), crew);
    }

    static String key(String name, String crew) {
        return folded(name) + "\n" + folded(crew);
    }

    /** {@return a name as it is compared} */
    static String folded(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    }
}
