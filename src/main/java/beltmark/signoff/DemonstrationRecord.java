package beltmark.signoff;

import beltmark.content.Checklist.Observation;
import beltmark.core.finish.Finish;
import beltmark.core.finish.FinishFinding;
import beltmark.core.setup.Measure;
import beltmark.core.setup.MeasureCheck;
import beltmark.core.setup.Side;
import beltmark.core.units.Length;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Body of the records {@code signoff.demonstration} and {@code signoff.not-passed}: all that was on the page when it was
 * signed. Who signed and when it was received is in the record itself; the printed name, the day and the meaning are kept
 * as 21 CFR 11.50 asks for. What came after {@code observed} is missing in records of before, and then empty.
 *
 * @param person the name of the person who showed the set-up
 * @param assessor the name of the person who signs
 * @param meaning what the signature says, as shown
 * @param language the language it was shown in
 * @param card the id of the hardware card
 * @param cardVersion its version
 * @param tip the id of the tip
 * @param blade the length of the blade; null when not all was measured
 * @param orientation the id of the orientation, empty when not all was measured
 * @param conveyor where
 * @param happenedOn the day at the site
 * @param measures what was measured; empty when not all was
 * @param checklist the id of the checklist
 * @param checklistVersion its version
 * @param observed what was seen done
 * @param seen what is said of each observation
 * @param readings what was read at the blade
 * @param explanations why something beyond its tolerance stays as it is, by the name of what it is
 * @param basis on what the assessor was one that day; null in records of before
 * @param trained whether the assessor says to have trained the person on this hardware
 * @param device what the clock of the device said; null in records of before
 */
public record DemonstrationRecord(
        String person,
        String assessor,
        String meaning,
        String language,
        String card,
        int cardVersion,
        String tip,
        @Nullable Length blade,
        String orientation,
        String conveyor,
        LocalDate happenedOn,
        List<Measured> measures,
        String checklist,
        int checklistVersion,
        List<String> observed,
        List<Said> seen,
        List<Reading> readings,
        Map<String, String> explanations,
        @Nullable Basis basis,
        boolean trained,
        @Nullable DeviceTimes device) {

    public DemonstrationRecord {
        measures = List.copyOf(measures);
        observed = List.copyOf(observed);
        seen = seen == null ? List.of() : List.copyOf(seen);
        readings = readings == null ? List.of() : List.copyOf(readings);
        explanations = explanations == null ? Map.of() : Map.copyOf(explanations);
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

    /**
     * What is said of one observation.
     *
     * @param observation its id
     * @param critical whether it is critical
     * @param answer {@code yes}, {@code no} or {@code not-seen}
     */
    public record Said(String observation, boolean critical, String answer) {}

    /**
     * One reading at the blade.
     *
     * @param reading its id
     * @param typed as typed
     * @param length as read, if it is a length
     * @param degrees as read, if it is an angle
     * @param within whether it was as the site wants it
     */
    public record Reading(
            String reading,
            String typed,
            @Nullable Length length,
            @Nullable Double degrees,
            boolean within) {}

    /**
     * Who and what else a record says, beside what was shown.
     *
     * @param person the name of the person who showed the set-up
     * @param assessor the name of the person who signs
     * @param basis on what the assessor is one
     */
    record Signed(String person, String assessor, Basis basis, Meaning meaning, DeviceTimes device) {}

    static DemonstrationRecord of(Signed signed, Demonstration shown) {
        EndMeasures measured = shown.measured();
        return new DemonstrationRecord(
                signed.person(),
                signed.assessor(),
                signed.meaning().sentence(),
                signed.meaning().language(),
                shown.rig().card().id(),
                shown.rig().card().version(),
                shown.rig().tip().id(),
                measured == null ? null : measured.setting().blade(),
                measured == null ? "" : measured.asLeft().orientation().id(),
                shown.place().conveyor(),
                shown.on(),
                measured == null ? List.of() : measures(shown, measured),
                shown.watched().checklist().id(),
                shown.watched().checklist().version(),
                said(shown.watched()).stream()
                        .filter(one -> one.answer().equals(Seen.YES.id()))
                        .map(Said::observation)
                        .toList(),
                said(shown.watched()),
                measured == null ? List.of() : readings(shown, measured.finish()),
                explained(shown),
                signed.basis(),
                shown.trained(),
                signed.device());
    }

    private static List<Said> said(Watched watched) {
        List<Said> said = new ArrayList<>();
        for (Observation one : watched.checklist().observations()) {
            said.add(new Said(one.id(), one.critical(), watched.answer(one).id()));
        }
        return said;
    }

    private static List<Measured> measures(Demonstration shown, EndMeasures measured) {
        List<MeasureCheck> checks = shown.findings().orElseThrow().measures().measures();
        List<Measured> measures = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            for (Side side : Side.values()) {
                Optional<MeasureCheck> check = checks.stream()
                        .filter(one -> one.measure() == measure && one.side() == side)
                        .findFirst();
                measures.add(new Measured(
                        measure.id(),
                        side.id(),
                        shown.typed().getOrDefault(DemonstrationForm.name(measure, side), ""),
                        measured.asLeft().of(measure).on(side),
                        check.map(MeasureCheck::wanted).orElse(null),
                        check.map(MeasureCheck::tolerance).orElse(null)));
            }
        }
        return measures;
    }

    private static List<Reading> readings(Demonstration shown, Finish finish) {
        return shown.findings().orElseThrow().finish().findings().stream()
                .map(finding -> reading(finding, shown, finish))
                .toList();
    }

    private static Reading reading(FinishFinding finding, Demonstration shown, Finish finish) {
        String id = finding.reading().id();
        boolean within = finding.isWithin();
        return switch (finding.reading()) {
            case CENTRING ->
                new Reading(
                        id,
                        typed(shown, DemonstrationForm.EDGE_LEFT) + " / " + typed(shown, DemonstrationForm.EDGE_RIGHT),
                        finish.offCentre(),
                        null,
                        within);
            case BLADE_ANGLE ->
                new Reading(
                        id,
                        typed(shown, DemonstrationForm.ANGLE),
                        null,
                        finish.bladeAngle().degrees(),
                        within);
            case BOUNCE -> new Reading(id, finish.bounce().id(), null, null, within);
            case SPLICE -> new Reading(id, typed(shown, DemonstrationForm.SPLICE), finish.splice(), null, within);
        };
    }

    private static String typed(Demonstration shown, String field) {
        return shown.typed().getOrDefault(field, "");
    }

    /** Only what is beyond its tolerance has anything to explain. */
    private static Map<String, String> explained(Demonstration shown) {
        Map<String, String> explained = new TreeMap<>(shown.explanations());
        explained.keySet().retainAll(shown.beyond());
        return explained;
    }

    /** {@return whether the demonstration was passed} */
    boolean isPassed() {
        return missed().isEmpty();
    }

    /** {@return what a reader must not overlook} */
    List<String> flags() {
        List<String> flags = new ArrayList<>();
        if (isPassed() && !explanations.isEmpty()) {
            flags.add("explained");
        }
        if (trained) {
            flags.add("trained-by-assessor");
        }
        if (basis != null && basis.isAppointed()) {
            flags.add("appointed-assessor");
        }
        return flags;
    }

    /** {@return the critical observations without a yes} */
    List<Said> missed() {
        return seen.stream()
                .filter(one -> one.critical() && !one.answer().equals(Seen.YES.id()))
                .toList();
    }

    /** {@return whether another sending of the same form said the same; its clock has moved on} */
    boolean saysTheSameAs(DemonstrationRecord other) {
        return withoutDevice().equals(other.withoutDevice());
    }

    private DemonstrationRecord withoutDevice() {
        return new DemonstrationRecord(
                person,
                assessor,
                meaning,
                language,
                card,
                cardVersion,
                tip,
                blade,
                orientation,
                conveyor,
                happenedOn,
                measures,
                checklist,
                checklistVersion,
                observed,
                seen,
                readings,
                explanations,
                basis,
                trained,
                null);
    }
}
