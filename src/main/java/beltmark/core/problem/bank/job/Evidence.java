package beltmark.core.problem.bank.job;

import beltmark.core.blade.EdgeLoads;
import beltmark.core.problem.Exhibit;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Side;
import beltmark.core.units.Force;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.Quantity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is measured at a cleaner once the conveyor is locked out again. The card's spring length is taken to give the
 * card's line load (a modelling assumption; a chart comes near it).
 *
 * @param card the hardware card
 * @param wanted the line load that the card wants
 * @param blade the length of the blade
 * @param set the card's spring length
 * @param fault what is behind it
 * @param side where it shows, when on one side
 * @param out how far what is wrong is out
 */
record Evidence(HardwareCard card, LineLoad wanted, Length blade, Length set, Fault fault, Side side, Out out) {

    static final List<String> ROWS = List.of("springs", "loads", "sleeve", "beyond", "nuts", "edge", "splice");

    /**
     * Drawn amounts; each counts only where it belongs to the fault.
     *
     * @param spring how far a spring is out
     * @param centre how far the blade is out of the middle
     * @param margin how far the splice is above what the cleaner can drop
     * @param splice the tallest splice, where it is not the fault
     * @param edge the belt beyond each end of a centred blade
     */
    record Out(Length spring, Length centre, Length margin, Length splice, Length edge) {}

    Length spring(Side on) {
        return switch (fault) {
            case TOO_HARD -> set.minus(out.spring);
            case TOO_LIGHT -> set.plus(out.spring);
            case UNEVEN -> on == side ? set.minus(out.spring) : set;
            default -> set;
        };
    }

    Length splice() {
        return fault == Fault.TALL_SPLICE ? card.sleeve().plus(out.margin) : out.splice;
    }

    Length sleeve() {
        return fault == Fault.LITTLE_SLEEVE ? out.splice.minus(out.margin) : card.sleeve();
    }

    /** How far right of the middle between the springs the blade sits. */
    private Length off() {
        Length off = side == Side.RIGHT ? out.centre : out.centre.negated();
        return fault == Fault.OFF_CENTRE ? off : Length.ZERO;
    }

    Length beyond(Side on) {
        return on == Side.LEFT ? out.edge.plus(off()) : out.edge.minus(off());
    }

    /** The line loads at both ends; refused where the blade would leave the belt. */
    EdgeLoads loads() {
        Force weight = card.blade().moving(blade).weight();
        EdgeLoads.Layout layout = new EdgeLoads.Layout(card.blade().span(blade), blade, off(), off());
        return EdgeLoads.fromSprings(force(Side.LEFT, weight), force(Side.RIGHT, weight), weight, layout)
                .result();
    }

    private Force force(Side on, Force weight) {
        Force asSet = wanted.over(blade).plus(weight).times(0.5);
        return asSet.plus(card.spring().rate().force(set.minus(spring(on))));
    }

    Exhibit table(EdgeLoads loads) {
        return new Exhibit(
                "fault-evidence",
                List.of("fault-what", "fault-card", "fault-left", "fault-right"),
                List.of(
                        row("springs", set, spring(Side.LEFT), spring(Side.RIGHT)),
                        row("loads", wanted, loads.left(), loads.right()),
                        row("sleeve", card.sleeve(), sleeve(), sleeve()),
                        row("beyond", out.edge, beyond(Side.LEFT), beyond(Side.RIGHT)),
                        words("nuts", Fault.LOOSE_NUT, "nut-holds", "nut-turns"),
                        words("edge", Fault.NICKED, "edge-whole", "edge-nicked"),
                        row("splice", card.sleeve(), splice(), splice())));
    }

    private static List<Quantity> row(String what, Quantity wanted, Quantity left, Quantity right) {
        return List.of(JobScene.word("fault-" + what), wanted, left, right);
    }

    private List<Quantity> words(String what, Fault when, String well, String badly) {
        Quantity fine = JobScene.word("fault-" + well);
        Quantity bad = JobScene.word("fault-" + badly);
        return row(
                what,
                fine,
                fault == when && side == Side.LEFT ? bad : fine,
                fault == when && side == Side.RIGHT ? bad : fine);
    }

    Map<String, Quantity> facts(EdgeLoads loads) {
        Map<String, Quantity> facts = new LinkedHashMap<>();
        facts.put("fault", JobScene.word("fault-" + fault.cause()));
        facts.put("blade", blade);
        facts.put("wanted", wanted);
        facts.put("spring-set", set);
        facts.put("spring-left", spring(Side.LEFT));
        facts.put("spring-right", spring(Side.RIGHT));
        facts.put("load-left", loads.left());
        facts.put("load-right", loads.right());
        facts.put("sleeve", sleeve());
        facts.put("splice", splice());
        facts.put("beyond-left", beyond(Side.LEFT));
        facts.put("beyond-right", beyond(Side.RIGHT));
        return facts;
    }
}
