package beltmark.content;

import beltmark.core.problem.LengthRange;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.problem.setup.PlaceWeights;
import beltmark.core.problem.setup.SetupFamily;
import beltmark.core.problem.setup.SetupPart;
import beltmark.core.problem.setup.SituationRanges;
import beltmark.core.setup.HardwareCard;
import beltmark.core.units.Length;
import beltmark.core.units.LengthSpan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the file of the set-up problem families. */
final class SetupProblemsFile {

    private SetupProblemsFile() {}

    /** {@return the families of the file; none that has a fault} */
    static List<ProblemFamily> read(ContentFile file, List<HardwareCard> cards, List<ContentFault> faults) {
        Fields fields = YamlFile.parse(file, faults);
        fields.text("source");
        Optional<SituationRanges> ranges =
                ranges(fields.length("reading"), fields.fields("draw"), fields.fields("answers"));
        List<ProblemFamily> families = new ArrayList<>();
        for (Fields family : fields.list("families")) {
            family(family, ranges, cards).ifPresent(families::add);
        }
        return fields.build(() -> families).orElse(List.of());
    }

    private static Optional<SituationRanges> ranges(Length reading, Fields draw, Fields answers) {
        Optional<LengthRange> beltMark = drawn(draw, "beltMark");
        Optional<LengthRange> outOfLevel = drawn(draw, "outOfLevel");
        Optional<LengthRange> roof = drawn(draw, "roof");
        Optional<LengthRange> floor = drawn(draw, "floor");
        Optional<LengthRange> obstacleFrom = drawn(draw, "obstacleFrom");
        Optional<LengthRange> obstacleSize = drawn(draw, "obstacleSize");
        Optional<LengthRange> mountedOff = drawn(draw, "mountedOff");
        Optional<LengthRange> splice = drawn(draw, "splice");
        Optional<LengthSpan> tape = span(answers.fields("tape"));
        Optional<LengthSpan> spring = span(answers.fields("spring"));
        Optional<LengthSpan> sleeve = span(answers.fields("sleeve"));
        return answers.build(() -> answers)
                .flatMap(sound -> draw.build(() -> new SituationRanges(
                        beltMark.orElseThrow(),
                        outOfLevel.orElseThrow(),
                        roof.orElseThrow(),
                        floor.orElseThrow(),
                        obstacleFrom.orElseThrow(),
                        obstacleSize.orElseThrow(),
                        mountedOff.orElseThrow(),
                        splice.orElseThrow(),
                        reading,
                        tape.orElseThrow(),
                        spring.orElseThrow(),
                        sleeve.orElseThrow())));
    }

    private static Optional<LengthRange> drawn(Fields draw, String name) {
        Fields range = draw.fields(name);
        Length step = range.length("step");
        Length from = range.length("from");
        Length to = range.length("to");
        return range.build(() -> new LengthRange(from, to, step));
    }

    private static Optional<LengthSpan> span(Fields fields) {
        Length from = fields.length("from");
        Length to = fields.length("to");
        return fields.build(() -> new LengthSpan(from, to));
    }

    private static Optional<ProblemFamily> family(
            Fields fields, Optional<SituationRanges> ranges, List<HardwareCard> cards) {
        String id = fields.text("id");
        int version = fields.whole("version");
        List<SetupPart> parts = fields.listOf("parts", List.of(SetupPart.values()), SetupPart::id);
        Optional<PlaceWeights> places = places(fields.fields("places"));
        return fields.build(() -> new Object())
                .flatMap(sound -> ranges)
                .map(known -> new SetupFamily(id, version, parts, places.orElseThrow(), known, cards));
    }

    private static Optional<PlaceWeights> places(Fields fields) {
        int asDelivered = fields.whole("asDelivered");
        int turnedOver = fields.whole("turnedOver");
        int nothingFits = fields.whole("nothingFits");
        return fields.build(() -> new PlaceWeights(asDelivered, turnedOver, nothingFits));
    }
}
