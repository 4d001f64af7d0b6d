package beltmark.content;

import beltmark.core.problem.ProblemCode;
import beltmark.core.problem.ProblemFamily;
import beltmark.core.setup.HardwareCard;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the content files say, checked as a whole: hardware cards and problem families.
 *
 * @param cards the hardware cards, by file name
 * @param families the problem families, in the order of the files
 */
public record Content(List<HardwareCard> cards, List<ProblemFamily> families) {

    private static final String HARDWARE = "content/hardware";
    private static final String PROBLEMS = "content/problems";

    /** How many problems of each family are drawn at start, to see that its ranges and the cards go together. */
    private static final int TRIALS = 50;

    public Content {
        cards = List.copyOf(cards);
        families = List.copyOf(families);
    }

    /**
     * Reads the content files shipped with the program.
     *
     * @throws ContentFaults with every fault found
     */
    public static Content read() {
        return read(ContentFile.list(HARDWARE), ContentFile.list(PROBLEMS));
    }

    /**
     * Reads content files.
     *
     * @param hardware hardware card files
     * @param problems problem family files
     * @throws ContentFaults with every fault found
     */
    public static Content read(List<ContentFile> hardware, List<ContentFile> problems) {
        List<ContentFault> faults = new ArrayList<>();
        List<HardwareCard> cards = hardware.stream()
                .flatMap(file -> HardwareFile.read(file, faults).stream())
                .toList();
        List<ProblemFamily> families = problems.stream()
                .flatMap(file -> SetupProblemsFile.read(file, cards, faults).stream())
                .toList();
        if (faults.isEmpty()) {
            families.forEach(family -> tryOut(family, faults));
        }
        if (!faults.isEmpty()) {
            throw new ContentFaults(faults);
        }
        return new Content(cards, families);
    }

    private static void tryOut(ProblemFamily family, List<ContentFault> faults) {
        try {
            for (int i = 0; i < TRIALS; i++) {
                family.problem(new ProblemCode(Integer.toString(i)));
            }
        } catch (IllegalStateException e) {
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
}
