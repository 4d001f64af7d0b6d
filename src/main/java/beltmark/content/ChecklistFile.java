package beltmark.content;

import beltmark.content.Checklist.Observation;
import beltmark.core.finish.FinishLimits;
import beltmark.core.units.Angle;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** Reads the file of a demonstration's checklist. */
final class ChecklistFile {

    private ChecklistFile() {}

    /** {@return the checklist, or empty when the file has a fault} */
    static Optional<Checklist> read(ContentFile file, List<ContentFault> faults) {
        Fields fields = YamlFile.parse(file, faults);
        String id = fields.text("id");
        if (!file.name().equals(id + ".yaml")) {
            fields.faultAt("id", "The id must be the file's name without .yaml.");
        }
        fields.text("source");
        int version = fields.whole("version");
        List<Observation> observations = fields.list("observations").stream()
                .flatMap(item -> observation(item).stream())
                .toList();
        List<String> ids = observations.stream().map(Observation::id).toList();
        if (new HashSet<>(ids).size() < ids.size()) {
            fields.faultAt("observations", "An observation is named twice.");
        }
        if (observations.stream().noneMatch(Observation::critical)) {
            fields.faultAt("observations", "At least one observation must be critical.");
        }
        Optional<FinishLimits> limits = limits(fields.fields("limits"));
        return fields.build(() -> new Checklist(id, version, observations, limits.orElseThrow()));
    }

    private static Optional<Observation> observation(Fields fields) {
        String id = fields.text("id");
        boolean critical = fields.yes("critical");
        return fields.build(() -> new Observation(id, critical));
    }

    private static Optional<FinishLimits> limits(Fields fields) {
        FinishLimits limits = new FinishLimits(
                fields.length("centring"),
                Angle.ofDegrees(fields.number("bladeAngleDegrees")),
                Angle.ofDegrees(fields.number("bladeAngleToleranceDegrees")));
        return fields.build(() -> limits);
    }
}
