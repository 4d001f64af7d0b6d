package beltmark.signoff;

import beltmark.content.Checklist;
import beltmark.web.OperationId;
import java.time.LocalDate;

/**
 * One sign-off under way, from its form to its record.
 *
 * @param fitter who showed the set-up
 * @param rig the hardware
 * @param checklist what must have been seen
 * @param today the day at the site
 * @param operation names this sign-off
 */
record UnderWay(Fitter fitter, Rig rig, Checklist checklist, LocalDate today, OperationId operation) {

    /** {@return the address of its form} */
    String path() {
        return "/sign-off/" + fitter.id() + "/" + rig.card().id() + "/"
                + rig.tip().id();
    }
}
