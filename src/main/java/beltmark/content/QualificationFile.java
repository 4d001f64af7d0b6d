package beltmark.content;

import beltmark.core.problem.ProblemFamily;
import beltmark.core.qualification.CleanNeed;
import beltmark.core.qualification.Consequence;
import beltmark.core.qualification.EventKind;
import beltmark.core.qualification.Needs;
import beltmark.core.qualification.QualificationRule;
import beltmark.core.setup.HardwareCard;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads one version of a qualification rule. */
final class QualificationFile {

    /** What an event leads to, as the file says it. */
    private enum Effect {
        HOLD("hold"),
        LAPSE("lapse-until");

        private final String id;

        Effect(String id) {
            this.id = id;
        }

        String id() {
            return id;
        }
    }

    private final Fields fields;
    private final List<HardwareCard> cards;
    private final List<ProblemFamily> families;
    private final int lifeDays;

    private QualificationFile(Fields fields, List<HardwareCard> cards, List<ProblemFamily> families) {
        this.fields = fields;
        this.cards = cards;
        this.families = families;
        this.lifeDays = fields.has("lifeDays") ? fields.whole("lifeDays") : Integer.MAX_VALUE;
    }

    /**
     * Reads a rule.
     *
     * @param file the file
     * @param cards the hardware cards, one of which it may name
     * @param families the problem families it may name
     * @param faults where faults are added
     * @return the rule, or empty when the file has a fault
     */
    static Optional<QualificationRule> read(
            ContentFile file, List<HardwareCard> cards, List<ProblemFamily> families, List<ContentFault> faults) {
        Fields fields = YamlFile.parse(file, faults);
        return new QualificationFile(fields, cards, families).read(file);
    }

    private Optional<QualificationRule> read(ContentFile file) {
        String id = fields.text("id");
        int version = fields.whole("version");
        if (!file.name().equals(id + ".yaml") && !file.name().equals(id + ".v" + version + ".yaml")) {
            fields.faultAt("id", "The id must be the file's name without .yaml; a later version may end in .v2.yaml.");
        }
        fields.text("source");
        LocalDate validFrom = fields.date("validFrom");
        Optional<String> card = card();
        List<String> procedures = fields.textsIfAny("procedures");
        Optional<Needs> needs = needs();
        List<Consequence> events = events();
        int dueSoonDays = fields.whole("dueSoonDays");
        return fields.build(() -> new QualificationRule(
                id, version, validFrom, card, procedures, needs.orElseThrow(), events, dueSoonDays));
    }

    private Optional<String> card() {
        if (!fields.has("card")) {
            return Optional.empty();
        }
        String card = fields.text("card");
        if (cards.stream().noneMatch(known -> known.id().equals(card))) {
            fields.faultAt("card", "There is no hardware card " + card + ".");
        }
        return Optional.of(card);
    }

    private Optional<Needs> needs() {
        List<CleanNeed> clean = clean();
        Optional<Needs.Pass> quiz = fields.has("quiz") ? pass(fields.fields("quiz")) : Optional.empty();
        List<Needs.Pass> papers = fields.listIfAny("papers").stream()
                .flatMap(paper -> pass(paper).stream())
                .toList();
        Optional<Needs.Demonstrations> demonstrations =
                fields.has("demonstrations") ? demonstrations(fields.fields("demonstrations")) : Optional.empty();
        List<String> prerequisites = fields.textsIfAny("prerequisites");
        return fields.make(() -> new Needs(clean, quiz, papers, demonstrations, prerequisites));
    }

    private List<CleanNeed> clean() {
        List<CleanNeed> clean = new ArrayList<>();
        for (Fields need : fields.listIfAny("clean")) {
            String family = need.text("family");
            int count = need.whole("count");
            if (families.stream().noneMatch(known -> known.id().equals(family))) {
                need.faultAt("family", "There is no problem family " + family + ".");
            }
            if (clean.stream().anyMatch(other -> other.family().equals(family))) {
                need.faultAt("family", "The family " + family + " is named twice.");
            }
            need.build(() -> new CleanNeed(family, count)).ifPresent(clean::add);
        }
        return clean;
    }

    private Optional<Needs.Pass> pass(Fields pass) {
        String id = pass.text("id");
        int days = days(pass);
        return pass.build(() -> new Needs.Pass(id, days));
    }

    private Optional<Needs.Demonstrations> demonstrations(Fields demonstrations) {
        int count = demonstrations.whole("count");
        int days = days(demonstrations);
        return demonstrations.build(() -> new Needs.Demonstrations(count, days));
    }

    /** {@return for how many days a need counts: no longer than the life of the whole, which stands in for its own} */
    private int days(Fields need) {
        boolean own = need.has("countsForDays") || lifeDays == Integer.MAX_VALUE;
        return own ? Math.min(need.whole("countsForDays"), lifeDays) : lifeDays;
    }

    private List<Consequence> events() {
        List<Consequence> events = new ArrayList<>();
        for (Fields one : fields.listIfAny("events")) {
            EventKind event = one.oneOf("event", List.of(EventKind.values()), EventKind::id);
            Effect effect = one.oneOf("effect", List.of(Effect.values()), Effect::id);
            Set<Needs.Kind> again = EnumSet.noneOf(Needs.Kind.class);
            if (effect == Effect.LAPSE) {
                again.addAll(one.listOf("needs", List.of(Needs.Kind.values()), Needs.Kind::id));
            }
            int afterDays = event == EventKind.LONG_ABSENCE ? one.whole("afterDays") : 0;
            one.build(() -> new Consequence(event, again, afterDays)).ifPresent(events::add);
        }
        return events;
    }
}
