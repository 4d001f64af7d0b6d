package beltmark.practice.pack;

import beltmark.web.Form;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What was asked for in a new pack.
 *
 * @param families the ids of the chosen families
 * @param count as typed
 * @param people the numbers of the chosen people
 * @param faults the key of the sentence for each field that has a fault
 */
public record PackForm(List<String> families, String count, List<Long> people, Map<String, String> faults) {

    public PackForm {
        families = List.copyOf(families);
        people = List.copyOf(people);
        faults = Map.copyOf(faults);
    }

    /** Reads a form; only what is offered can be chosen. */
    static PackForm read(Form form, List<String> offered, List<Receiver> receivers) {
        List<String> families =
                offered.stream().filter(form.all("family")::contains).toList();
        List<Long> people = new ArrayList<>();
        receivers.stream()
                .map(Receiver::id)
                .filter(id -> form.all("person").contains(id.toString()))
                .forEach(people::add);
        Map<String, String> faults = new LinkedHashMap<>();
        if (families.isEmpty()) {
            faults.put("family", "pack.no-family");
        }
        if (people.isEmpty()) {
            faults.put("person", "pack.no-person");
        }
        if (!form.text("count").matches("[1-" + Packs.MOST_OF_A_FAMILY + "]")) {
            faults.put("count", "pack.no-count");
        }
        return new PackForm(families, form.text("count"), people, faults);
    }

    int number() {
        return Integer.parseInt(count);
    }
}
