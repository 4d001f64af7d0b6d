package beltmark.content;

import beltmark.core.lockout.Audience;
import beltmark.core.lockout.Blueprint;
import beltmark.core.procedure.ProcedureQuestions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reads the plans of the papers that are drawn from the bank.
 *
 * @param blueprints the plans
 * @param ruleSets the rule sets in force until the coordinator chooses others
 */
record PapersFile(List<Blueprint> blueprints, List<String> ruleSets) {

    private static final List<Audience> AUDIENCES = List.of(Audience.AUTHORIZED, Audience.AFFECTED);

    PapersFile {
        blueprints = List.copyOf(blueprints);
        ruleSets = List.copyOf(ruleSets);
    }

    /**
     * Reads the file.
     *
     * @param file the file
     * @param points the critical points that questions have
     * @param topics the topics of the bank
     * @param faults where faults are added
     */
    static PapersFile read(ContentFile file, Set<String> points, Set<String> topics, List<ContentFault> faults) {
        Fields fields = YamlFile.parse(file, faults);
        List<String> ruleSets = fields.texts("ruleSets");
        List<Blueprint> blueprints = new ArrayList<>();
        for (Fields paper : fields.list("papers")) {
            blueprint(paper, points, topics, blueprints);
        }
        fields.build(() -> ruleSets);
        return new PapersFile(blueprints, ruleSets);
    }

    private static void blueprint(Fields fields, Set<String> points, Set<String> topics, List<Blueprint> blueprints) {
        String id = fields.text("id");
        int version = fields.whole("version");
        Audience audience = fields.oneOf("audience", AUDIENCES, Audience::id);
        int passPercent = fields.whole("passPercent");
        int fewest = fields.whole("fewest");
        List<String> asked = fields.texts("points");
        if (!points.containsAll(asked)) {
            fields.faultAt("points", "Questions have the points " + points + ".");
        }
        Fields counts = fields.fields("topics");
        Map<String, Integer> slots = new LinkedHashMap<>();
        counts.names().forEach(topic -> slots.put(topic, counts.whole(topic)));
        if (!slots.keySet().stream()
                .allMatch(topic -> topics.contains(topic) || topic.equals(ProcedureQuestions.TOPIC))) {
            fields.faultAt("topics", "The topics of the bank are " + topics + ".");
        }
        fields.build(() -> new Blueprint(id, version, audience, passPercent, fewest, asked, slots))
                .ifPresent(blueprints::add);
    }
}
