package beltmark.content;

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
        List<String> observations = fields.texts("observations");
        if (new HashSet<>(observations).size() < observations.size()) {
            fields.faultAt("observations", "An observation is named twice.");
        }
        return fields.build(() -> new Checklist(id, version, observations));
    }
}
