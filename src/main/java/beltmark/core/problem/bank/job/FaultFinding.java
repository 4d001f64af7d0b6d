package beltmark.core.problem.bank.job;

import beltmark.core.blade.EdgeLoads;
import beltmark.core.problem.Carry;
import beltmark.core.problem.ChoiceBlank;
import beltmark.core.problem.Draw;
import beltmark.core.problem.FamilyRanges;
import beltmark.core.problem.Given;
import beltmark.core.problem.Part;
import beltmark.core.problem.Recipe;
import beltmark.core.problem.SeveralBlank;
import beltmark.core.refusal.Refused;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Side;
import beltmark.core.setup.Tip;
import beltmark.core.setup.TipCard;
import beltmark.core.solution.Step;
import beltmark.core.units.Word;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A fault after start-up: what on the table is not as wanted, what is behind it, and what is done. Cause and remedy are
 * common practice, no published source.
 */
public final class FaultFinding implements Recipe {

    private static final String PREFIX = "fault-";
    private static final String CAUSE = "fault-cause";
    private static final String PICK = "pick";

    private final FamilyRanges ranges;
    private final List<HardwareCard> cards;

    /** Makes the recipe; throws {@link IllegalArgumentException} when a range is missing. */
    public FaultFinding(FamilyRanges ranges, List<HardwareCard> cards) {
        this.ranges = ranges;
        this.cards = List.copyOf(cards);
        List.of("spring", "centre", "margin", "splice", "edge").forEach(ranges::length);
    }

    @Override
    public Optional<Posed> pose(Draw draw) {
        HardwareCard card = draw.oneOf(cards);
        Tip tip = draw.oneOf(List.of(Tip.values()));
        TipCard.Setting row = draw.oneOf(card.tip(tip).chart());
        Evidence evidence = new Evidence(
                card,
                card.blade().wanted(tip),
                row.blade(),
                row.springLength(),
                draw.oneOf(List.of(Fault.values())),
                draw.oneOf(List.of(Side.values())),
                new Evidence.Out(
                        draw.length(ranges.length("spring")),
                        draw.length(ranges.length("centre")),
                        draw.length(ranges.length("margin")),
                        draw.length(ranges.length("splice")),
                        draw.length(ranges.length("edge"))));
        try {
            return Optional.of(posed(evidence, tip, evidence.loads()));
        } catch (Refused blade) {
            // springs so far out lift the blade off the belt, which is another fault
            return Optional.empty();
        }
    }

    private static Posed posed(Evidence evidence, Tip tip, EdgeLoads loads) {
        Fault fault = evidence.fault();
        return new Posed(
                new JobScene(Optional.of(evidence.card()), evidence.facts(loads)),
                List.of(
                        new Given(
                                "card",
                                new Word("hardware.name." + evidence.card().id())),
                        new Given("tip", tip.word()),
                        new Given("blade", evidence.blade()),
                        new Given("fault-shows", option(fault.shows()))),
                List.of(compared(evidence, loads), cause(fault), remedy(fault)));
    }

    private static Word option(String name) {
        return JobScene.word(PREFIX + name);
    }

    private static Part compared(Evidence evidence, EdgeLoads loads) {
        Fault fault = evidence.fault();
        Map<String, String> picks = Evidence.ROWS.stream()
                .collect(Collectors.toMap(row -> PREFIX + row, row -> fault.isOff(row) ? "overlooked" : "agrees"));
        return new Part(
                "fault-compared",
                List.of(),
                List.of(evidence.table(loads)),
                List.of(new SeveralBlank(
                        "off",
                        Evidence.ROWS.stream().map(PREFIX::concat).toList(),
                        Evidence.ROWS.stream()
                                .filter(fault::isOff)
                                .map(PREFIX::concat)
                                .collect(Collectors.toSet()),
                        Map.of(),
                        picks)),
                Evidence.ROWS.stream()
                        .filter(fault::isOff)
                        .map(row -> Step.of("fault-row", "row", option(row)))
                        .toList());
    }

    private static Part cause(Fault fault) {
        List<String> causes = Stream.of(Fault.values()).map(Fault::cause).toList();
        return new Part(
                CAUSE,
                List.of(),
                List.of(choice(causes, fault.cause(), Carry.none())),
                List.of(Step.of("why-fault-" + fault.cause(), "cause", option(fault.cause()))));
    }

    private static Part remedy(Fault fault) {
        List<String> remedies =
                Stream.of(Fault.values()).map(Fault::remedy).distinct().toList();
        Carry<String> carry = own -> Optional.of(PREFIX
                + Fault.ofCause(own.choice(Part.path(CAUSE, PICK), PREFIX + fault.cause()), fault)
                        .remedy());
        return new Part(
                "fault-remedy",
                List.of(),
                List.of(choice(remedies, fault.remedy(), carry)),
                List.of(Step.of("fault-remedy", "cause", option(fault.cause()))
                        .with("remedy", option(fault.remedy()))));
    }

    /** A choice in which every wrong option is a slip of the same name. */
    private static ChoiceBlank choice(List<String> names, String right, Carry<String> carry) {
        return new ChoiceBlank(
                PICK,
                names.stream().map(PREFIX::concat).toList(),
                PREFIX + right,
                names.stream()
                        .filter(name -> !name.equals(right))
                        .collect(Collectors.toMap(PREFIX::concat, name -> "not-" + name)),
                carry);
    }
}
