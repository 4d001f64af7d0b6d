package beltmark.desk;

import beltmark.web.Form;
import beltmark.web.Option;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The form of an inspection as it was sent.
 *
 * @param procedure the id of the procedure
 * @param on the day
 * @param included the employees included, by number
 * @param inspector who inspected, by number
 * @param apart whether it was confirmed that the inspector does not use the procedure
 * @param result {@code good} or {@code finding}
 * @param reason what was found
 */
public record InspectionForm(
        String procedure,
        String on,
        List<String> included,
        String inspector,
        boolean apart,
        String result,
        String reason) {

    private static final String FINDING = "finding";
    private static final LocalDate FIRST = LocalDate.of(2000, 1, 1);

    public InspectionForm {
        included = List.copyOf(included);
    }

    static InspectionForm blank(LocalDate today) {
        return new InspectionForm("", today.toString(), List.of(), "", false, "", "");
    }

    static InspectionForm of(Form form) {
        return new InspectionForm(
                form.text("procedure"),
                form.text("on"),
                form.all("included").stream().distinct().toList(),
                form.text("inspector"),
                form.has("apart"),
                form.text("result"),
                form.text("reason"));
    }

    /** {@return what keeps it from being recorded: the name of each field with the word for its fault} */
    Map<String, String> faults(List<Machine> machines, List<Option> people, LocalDate today) {
        List<String> numbers = people.stream().map(Option::value).toList();
        Map<String, String> faults = new TreeMap<>();
        if (machines.stream().noneMatch(machine -> machine.procedure().equals(procedure))) {
            faults.put("procedure", "pick");
        }
        if (Typing.day(on, FIRST, today).isEmpty()) {
            faults.put("on", "past");
        }
        if (included.isEmpty() || !numbers.containsAll(included)) {
            faults.put("included", "pick");
        }
        if (!numbers.contains(inspector)) {
            faults.put("inspector", "pick");
        } else if (included.contains(inspector)) {
            faults.put("inspector", "among");
        } else if (!apart) {
            faults.put("inspector", "not-apart");
        }
        if (!result.equals("good") && !result.equals(FINDING)) {
            faults.put("result", "pick");
        }
        if (result.equals(FINDING) && !Typing.isSaid(reason)) {
            faults.put("reason", "say");
        }
        return faults;
    }

    InspectionMade toBody(Machine machine) {
        return new InspectionMade(
                procedure,
                machine.name(),
                machine.version(),
                LocalDate.parse(on),
                included.stream().map(Long::valueOf).toList(),
                Long.parseLong(inspector),
                result.equals(FINDING),
                result.equals(FINDING) ? reason : "");
    }
}
