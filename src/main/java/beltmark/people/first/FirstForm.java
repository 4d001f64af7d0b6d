package beltmark.people.first;

import beltmark.people.PinRules;
import beltmark.web.Form;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What the first admin enters.
 *
 * @param code the code from the start of the server
 * @param crew the name of the first crew
 * @param name the admin's own name
 * @param graduation the word of how lengths are shown
 * @param pin the chosen PIN
 * @param again the same once more
 */
record FirstForm(String code, String crew, String name, String graduation, String pin, String again) {

    private static final int LONGEST = 60;

    static FirstForm of(Form form) {
        return new FirstForm(
                form.text("code"),
                form.text("crew"),
                form.text("name"),
                form.text("graduation"),
                form.text("new-pin"),
                form.text("again-pin"));
    }

    /** {@return what is wrong: the key of a sentence by the name of its field; the code is not looked at} */
    Map<String, String> faults() {
        Map<String, String> faults = new LinkedHashMap<>();
        if (crew.isEmpty() || crew.length() > LONGEST) {
            faults.put("crew", "first.fault.crew");
        }
        if (name.isEmpty() || name.length() > LONGEST) {
            faults.put("name", "first.fault.name");
        }
        PinRules.findFault("", pin, again)
                .ifPresent(fault -> faults.put("new-pin", "people.pin-fault." + fault.word()));
        return faults;
    }
}
