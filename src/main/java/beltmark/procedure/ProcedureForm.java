package beltmark.procedure;

import beltmark.core.procedure.EnergyKind;
import beltmark.core.procedure.ProcedureCard;
import beltmark.core.procedure.ProcedureCard.Energy;
import beltmark.core.procedure.ProcedureCard.Point;
import beltmark.web.Form;
import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A procedure as the form sends it: rows with nothing in them are left out.
 *
 * @param machine the name of the machine
 * @param use for which work it is meant
 * @param reason what was changed and why
 * @param points the isolation points
 * @param energies the energies
 * @param steps the steps, one a line
 */
record ProcedureForm(
        String machine, String use, String reason, List<Point> points, List<Energy> energies, String steps) {

    /** No procedure can have the id that the address of the blank form ends in. */
    private static final String ADDRESS_OF_FORM = "enter";

    private static final int LONGEST = 120;
    private static final int LONGEST_STEP = 200;

    static final ProcedureForm EMPTY = new ProcedureForm("", "", "", List.of(), List.of(), "");

    ProcedureForm {
        points = List.copyOf(points);
        energies = List.copyOf(energies);
    }

    static ProcedureForm of(ProcedureCard card) {
        return new ProcedureForm(
                card.machine(), card.use(), "", card.points(), card.energies(), String.join("\n", card.steps()));
    }

    static ProcedureForm read(Form form) {
        List<Point> points = IntStream.rangeClosed(1, ProcedureCard.MOST_POINTS)
                .mapToObj(i -> new Point(
                        form.text("point-" + i),
                        form.text("point-kind-" + i),
                        form.text("point-location-" + i),
                        form.text("point-verification-" + i)))
                .filter(point -> !(point.name() + point.location() + point.verification()).isEmpty())
                .toList();
        List<Energy> energies = IntStream.rangeClosed(1, ProcedureCard.MOST_ENERGIES)
                .mapToObj(i -> new Energy(form.text("energy-kind-" + i), form.text("energy-" + i)))
                .filter(energy -> !energy.magnitude().isEmpty())
                .toList();
        return new ProcedureForm(
                form.text("machine"), form.text("use"), form.text("reason"), points, energies, form.text("steps"));
    }

    /** {@return what keeps the form from being kept: the name of each field with the word for its fault} */
    Map<String, String> faults(boolean changes) {
        Map<String, String> faults = new TreeMap<>();
        require(faults, "machine", machine);
        require(faults, "use", use);
        if (slug(machine).isEmpty() || slug(machine).equals(ADDRESS_OF_FORM)) {
            faults.put("machine", "missing");
        }
        if (changes) {
            require(faults, "reason", reason);
        }
        boolean whole = points.stream()
                .allMatch(point -> isSound(point.name())
                        && isSound(point.location())
                        && isSound(point.verification())
                        && EnergyKind.find(point.kind()).isPresent());
        if (points.isEmpty() || !whole) {
            faults.put("points", points.isEmpty() ? "missing" : "not-whole");
        }
        if (energies.isEmpty()
                || !energies.stream()
                        .allMatch(energy -> isSound(energy.magnitude())
                                && EnergyKind.find(energy.kind()).isPresent())) {
            faults.put("energies", "missing");
        }
        List<String> lines = lines();
        if (lines.size() < ProcedureCard.FEWEST_STEPS || lines.size() > ProcedureCard.MOST_STEPS) {
            faults.put("steps", "count");
        } else if (lines.stream().distinct().count() < lines.size()
                || lines.stream().anyMatch(line -> line.length() > LONGEST_STEP)) {
            faults.put("steps", "alike");
        }
        return faults;
    }

    private static void require(Map<String, String> faults, String field, String value) {
        if (!isSound(value)) {
            faults.put(field, "missing");
        }
    }

    private static boolean isSound(String text) {
        return !text.isBlank() && text.length() <= LONGEST;
    }

    private List<String> lines() {
        return Arrays.stream(steps.split("\n", -1))
                .map(String::strip)
                .filter(line -> !line.isEmpty())
                .toList();
    }

    /** {@return the card of a form without faults; its version is given when it is kept} */
    ProcedureCard toCard(String id) {
        return new ProcedureCard(id, 1, machine, use, new ArrayList<>(points), energies, lines());
    }

    /** {@return the id of a new procedure} */
    String newId() {
        return slug(machine);
    }

    private static String slug(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFD).replaceAll("\\p{M}", "");
        return plain.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-|-$", "");
    }
}
