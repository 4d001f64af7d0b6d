package beltmark.signoff;

import beltmark.core.setup.Measure;
import beltmark.core.setup.MeasureCheck;
import beltmark.core.setup.Side;
import beltmark.core.units.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Body of the record {@code signoff.demonstration}: all that was on the page when it was signed. Who signed and when is
 * in the record itself; the printed name, the day and the meaning are kept as 21 CFR 11.50 asks for.
 *
 * @param person the name of the person who showed the set-up
 * @param assessor the name of the person who signs
 * @param meaning what the signature says, as shown
 * @param language the language it was shown in
 * @param card the id of the hardware card
 * @param cardVersion its version
 * @param tip the id of the tip
 * @param blade the length of the blade
 * @param orientation the id of the orientation
 * @param conveyor where
 * @param happenedOn the day at the site
 * @param measures what was measured
 * @param checklist the id of the checklist
 * @param checklistVersion its version
 * @param observed what was seen, all of the checklist
 */
public record DemonstrationRecord(
        String person,
        String assessor,
        String meaning,
        String language,
        String card,
        int cardVersion,
        String tip,
        Length blade,
        String orientation,
        String conveyor,
        LocalDate happenedOn,
        List<Measured> measures,
        String checklist,
        int checklistVersion,
        List<String> observed) {

    public DemonstrationRecord {
        measures = List.copyOf(measures);
        observed = List.copyOf(observed);
    }

    /**
     * One measure of one side.
     *
     * @param measure its id
     * @param side the id of the side
     * @param typed as typed
     * @param measured as read
     * @param wanted what the card asks for; null for a belt mark, of which nothing is wanted
     * @param tolerance how far off it may be; null for a belt mark
     */
    public record Measured(
            String measure,
            String side,
            String typed,
            Length measured,
            @Nullable Length wanted,
            @Nullable Length tolerance) {}

    static DemonstrationRecord of(String person, String assessor, Meaning meaning, Demonstration shown) {
        return new DemonstrationRecord(
                person,
                assessor,
                meaning.sentence(),
                meaning.language(),
                shown.rig().card().id(),
                shown.rig().card().version(),
                shown.rig().tip().id(),
                shown.setting().blade(),
                shown.asLeft().orientation().id(),
                shown.conveyor(),
                shown.on(),
                measures(shown),
                shown.checklist().id(),
                shown.checklist().version(),
                shown.checklist().observations());
    }

    private static List<Measured> measures(Demonstration shown) {
        List<MeasureCheck> checks = shown.check().measures();
        List<Measured> measures = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            for (Side side : Side.values()) {
                Optional<MeasureCheck> check = checks.stream()
                        .filter(one -> one.measure() == measure && one.side() == side)
                        .findFirst();
                measures.add(new Measured(
                        measure.id(),
                        side.id(),
                        shown.typed().getOrDefault(measure.id() + "-" + side.id(), ""),
                        shown.asLeft().of(measure).on(side),
                        check.map(MeasureCheck::wanted).orElse(null),
                        check.map(MeasureCheck::tolerance).orElse(null)));
            }
        }
        return measures;
    }
}
