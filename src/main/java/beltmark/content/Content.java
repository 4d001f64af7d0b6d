package beltmark.content;

import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.qualification.QualificationRule;
import beltmark.core.qualification.Rules;
import beltmark.core.setup.HardwareCard;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What the content files say, checked as a whole: hardware cards, problem families, qualification rules and checklists.
 *
 * @param cards the hardware cards, by file name
 * @param families the problem families: those of the set-up first, then the others in the order of the files
 * @param rules the qualification rules, all versions
 * @param checklists what is watched while a job is shown in the field
 */
public record Content(List<HardwareCard> cards, List<ProblemFamily> families, Rules rules, List<Checklist> checklists) {

    private static final String HARDWARE = "content/hardware";
    private static final String PROBLEMS = "content/problems";
    private static final String SET_UP = "set-up.yaml";
    private static final String QUALIFICATIONS = "content/qualifications";
    private static final String DEMONSTRATIONS = "content/demonstrations";

    /** How many problems of each family are drawn at start, to see that its ranges and the cards go together. */
    private static final int TRIALS = 50;

    public Content {
        cards = List.copyOf(cards);
        families = List.copyOf(families);
        checklists = List.copyOf(checklists);
    }

    /**
     * Reads the content files shipped with the program.
     *
     * @throws ContentFaults with every fault found
     */
    public static Content read() {
        return read(
                ContentFile.list(HARDWARE),
                ContentFile.list(PROBLEMS),
                ContentFile.list(QUALIFICATIONS),
                ContentFile.list(DEMONSTRATIONS));
    }

    /**
     * Reads content files without rules and checklists.
     *
     * @param hardware hardware card files
     * @param problems problem family files
     * @throws ContentFaults with every fault found
     */
    public static Content read(List<ContentFile> hardware, List<ContentFile> problems) {
        return read(hardware, problems, List.of(), List.of());
    }

    /**
     * Reads content files.
     *
     * @param hardware hardware card files
     * @param problems problem family files
     * @param qualifications qualification rule files
     * @param demonstrations checklist files
     * @throws ContentFaults with every fault found
     */
    public static Content read(
            List<ContentFile> hardware,
            List<ContentFile> problems,
            List<ContentFile> qualifications,
            List<ContentFile> demonstrations) {
        List<ContentFault> faults = new ArrayList<>();
        List<HardwareCard> cards = hardware.stream()
                .flatMap(file -> HardwareFile.read(file, faults).stream())
                .toList();
        List<ProblemFamily> families = problems.stream()
                .sorted(Comparator.comparing(file -> !file.name().equals(SET_UP)))
                .flatMap(file -> file.name().equals(SET_UP)
                        ? SetupProblemsFile.read(file, cards, faults).stream()
                        : FamilyFile.read(file, cards, faults).stream())
                .toList();
        List<QualificationRule> versions = qualifications.stream()
                .flatMap(file -> QualificationFile.read(file, cards, families, faults).stream())
                .toList();
        List<Checklist> checklists = demonstrations.stream()
                .flatMap(file -> ChecklistFile.read(file, faults).stream())
                .toList();
        if (faults.isEmpty()) {
            families.forEach(family -> tryOut(family, faults));
        }
        Rules rules = rules(versions, faults);
        if (!faults.isEmpty()) {
            throw new ContentFaults(faults);
        }
        return new Content(cards, families, rules, checklists);
    }

    private static Rules rules(List<QualificationRule> versions, List<ContentFault> faults) {
        if (!faults.isEmpty()) {
            return Rules.of(List.of());
        }
        try {
            return Rules.of(versions);
        } catch (IllegalArgumentException e) {
            faults.add(new ContentFault(QUALIFICATIONS, 0, "The rules do not go together: " + e.getMessage() + "."));
            return Rules.of(List.of());
        }
    }

    private static void tryOut(ProblemFamily family, List<ContentFault> faults) {
        try {
            for (int i = 0; i < TRIALS; i++) {
                family.problem(new ProblemCode(Integer.toString(i)));
            }
        } catch (IllegalStateException | IllegalArgumentException e) {
            faults.add(
                    new ContentFault(
                            PROBLEMS,
                            0,
                            "With these cards and ranges the family " + family.id()
                                    + " cannot be drawn: nearly every draw has a slip that cannot be told from the right answer."));
        }
    }

    /** {@return the card of an id} */
    public Optional<HardwareCard> findCard(String id) {
        return cards.stream().filter(card -> card.id().equals(id)).findFirst();
    }

    /** {@return the family of an id} */
    public Optional<ProblemFamily> findFamily(String id) {
        return families.stream().filter(family -> family.id().equals(id)).findFirst();
    }

    /** {@return the checklist of an id, which must exist} */
    public Checklist getChecklist(String id) {
        return checklists.stream()
                .filter(checklist -> checklist.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("there is no content/demonstrations/" + id + ".yaml"));
    }
}
