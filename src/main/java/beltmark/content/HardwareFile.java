package beltmark.content;

import beltmark.core.refusal.Refusal;
import beltmark.core.setup.BladeCard;
import beltmark.core.setup.CardTolerances;
import beltmark.core.setup.HardwareCard;
import beltmark.core.setup.Orientation;
import beltmark.core.setup.PoleCard;
import beltmark.core.setup.Reach;
import beltmark.core.setup.Tip;
import beltmark.core.setup.TipCard;
import beltmark.core.spring.CompressionSpring;
import beltmark.core.spring.SpringEnds;
import beltmark.core.units.Length;
import beltmark.core.units.LineLoad;
import beltmark.core.units.LineMass;
import beltmark.core.units.Mass;
import beltmark.core.units.Ratio;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads a hardware card file. */
final class HardwareFile {

    private static final Map<Refusal, String> IMPOSSIBLE = Map.of(
            Refusal.COIL_NOT_LARGER_THAN_WIRE, "the coil is not larger than the wire",
            Refusal.NO_ACTIVE_COILS, "it has no active coil",
            Refusal.FREE_NOT_ABOVE_SOLID, "its free length is not above its solid length");

    private HardwareFile() {}

    /** {@return the card, or empty when the file has a fault} */
    static Optional<HardwareCard> read(ContentFile file, List<ContentFault> faults) {
        Fields fields = YamlFile.parse(file, faults);
        String id = fields.text("id");
        if (!file.name().equals(id + ".yaml")) {
            fields.faultAt("id", "The id must be the file's name without .yaml.");
        }
        fields.text("source");
        int version = fields.whole("version");
        Length washer = fields.length("washer");
        Length clearance = fields.length("clearance");
        Length sleeve = fields.length("sleeve");
        Optional<CompressionSpring> spring = spring(fields.fields("spring"));
        Map<Orientation, Reach> reaches = reaches(fields.fields("reach"));
        Map<Tip, TipCard> tips = tips(fields.fields("tips"), new ChartLimits(spring, washer));
        Optional<CardTolerances> tolerances = tolerances(fields.fields("tolerances"));
        Optional<BladeCard> blade = blade(fields.fields("blade"));
        Optional<PoleCard> pole = pole(fields.fields("pole"));
        return fields.build(() -> new HardwareCard(
                id,
                version,
                tips,
                reaches,
                clearance,
                spring.orElseThrow(),
                washer,
                sleeve,
                tolerances.orElseThrow(),
                blade.orElseThrow(),
                pole.orElseThrow()));
    }

    private static Optional<CompressionSpring> spring(Fields fields) {
        Length wire = fields.length("wire");
        Length meanCoil = fields.length("meanCoil");
        double activeCoils = fields.number("activeCoils");
        SpringEnds ends = fields.oneOf("ends", List.of(SpringEnds.values()), SpringEnds::id);
        Length freeLength = fields.length("freeLength");
        double shearModulus = fields.number("shearModulusMegapascals");
        CompressionSpring spring = new CompressionSpring(wire, meanCoil, activeCoils, ends, freeLength, shearModulus);
        if (fields.isSound()) {
            spring.refusals().forEach(refusal -> fields.fault(sentence(refusal)));
        }
        return fields.build(() -> spring);
    }

    private static String sentence(Refusal refusal) {
        return "This spring is impossible: " + IMPOSSIBLE.getOrDefault(refusal, "a number is out of range") + ".";
    }

    private static Map<Orientation, Reach> reaches(Fields fields) {
        Map<Orientation, Reach> reaches = new EnumMap<>(Orientation.class);
        for (Orientation orientation : Orientation.values()) {
            Fields reach = fields.fields(orientation.id());
            Length below = reach.length("below");
            Length above = reach.length("above");
            reach.build(() -> new Reach(below.negated(), above)).ifPresent(built -> reaches.put(orientation, built));
        }
        fields.build(() -> reaches);
        return reaches;
    }

    private static Map<Tip, TipCard> tips(Fields fields, ChartLimits limits) {
        Map<Tip, TipCard> tips = new EnumMap<>(Tip.class);
        for (Tip tip : Tip.values()) {
            tip(fields.fields(tip.id()), limits).ifPresent(built -> tips.put(tip, built));
        }
        fields.build(() -> tips);
        return tips;
    }

    private static Optional<TipCard> tip(Fields fields, ChartLimits limits) {
        Length overslung = fields.length(Orientation.OVERSLUNG.id());
        Length underslung = fields.length(Orientation.UNDERSLUNG.id());
        List<TipCard.Setting> chart = new ArrayList<>();
        for (Fields row : fields.list("chart")) {
            Length blade = row.length("blade");
            Length springLength = row.length("springLength");
            limits.check(row, springLength);
            if (!chart.isEmpty() && blade.compareTo(chart.get(chart.size() - 1).blade()) <= 0) {
                row.faultAt("blade", "The rows of a chart must go from the shortest blade to the longest, each once.");
            }
            row.build(() -> new TipCard.Setting(blade, springLength)).ifPresent(chart::add);
        }
        return fields.build(() -> new TipCard(overslung, underslung, chart));
    }

    private static Optional<CardTolerances> tolerances(Fields fields) {
        Length mark = fields.length("mark");
        Length spring = fields.length("spring");
        Length sleeve = fields.length("sleeve");
        return fields.build(() -> new CardTolerances(mark, spring, sleeve));
    }

    private static Optional<BladeCard> blade(Fields fields) {
        double base = fields.number("movingKilograms");
        double perMetre = fields.number("movingKilogramsPerMetre");
        Length contact = fields.length("contact");
        Length spanBeyondBlade = fields.length("spanBeyondBlade");
        double friction = fields.number("friction");
        Map<Tip, LineLoad> wanted = wanted(fields.fields("lineLoadNewtonsPerMillimetre"));
        return fields.build(() -> new BladeCard(
                new Mass(base), new LineMass(perMetre), contact, spanBeyondBlade, new Ratio(friction), wanted));
    }

    private static Map<Tip, LineLoad> wanted(Fields fields) {
        Map<Tip, LineLoad> wanted = new EnumMap<>(Tip.class);
        for (Tip tip : Tip.values()) {
            wanted.put(tip, new LineLoad(fields.number(tip.id())));
        }
        fields.build(() -> wanted);
        return wanted;
    }

    private static Optional<PoleCard> pole(Fields fields) {
        Length bracket = fields.length("bracket");
        Length overhang = fields.length("overhang");
        Length nutPitch = fields.length("nutPitch");
        return fields.build(() -> new PoleCard(bracket, overhang, nutPitch));
    }

    /** A spring can only be set between solid and free. */
    private record ChartLimits(Optional<CompressionSpring> spring, Length washer) {

        void check(Fields row, Length springLength) {
            spring.ifPresent(known -> {
                Length coil = springLength.minus(washer);
                if (coil.compareTo(known.freeLength()) >= 0) {
                    row.faultAt(
                            "springLength",
                            "At this length the spring is loose: less the washer it is not shorter than free.");
                }
                if (coil.compareTo(known.solidLength()) <= 0) {
                    row.faultAt(
                            "springLength",
                            "At this length the spring is coil-bound: less the washer it is not longer than solid.");
                }
            });
        }
    }
}
