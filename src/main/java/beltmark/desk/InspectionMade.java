package beltmark.desk;

import java.time.LocalDate;
import java.util.List;

/**
 * Body of the record {@code desk.inspection}.
 *
 * @param procedure the id of the procedure
 * @param machine the machine on which it was used
 * @param version the version that was inspected
 * @param inspectedOn the day
 * @param included the employees included, by number
 * @param inspector who inspected, by number; somebody who does not use the procedure
 * @param finding whether something was found
 * @param reason what was found; empty when nothing was
 */
record InspectionMade(
        String procedure,
        String machine,
        int version,
        LocalDate inspectedOn,
        List<Long> included,
        long inspector,
        boolean finding,
        String reason) {

    InspectionMade {
        included = List.copyOf(included);
    }
}
