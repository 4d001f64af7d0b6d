package beltmark;

import beltmark.Browser.Reply;
import beltmark.content.Checklist.Observation;
import java.util.ArrayList;
import java.util.List;

/** What a supervisor enters for a set-up of the narrow-belt rig with carbide tips that is within its card. */
public final class SampleDemonstration {

    /** Where the form is, below the person's number. */
    public static final String RIG = "/narrow-belt-rig/carbide";

    private static final List<Observation> OBSERVATIONS =
            Sample.content().getChecklist("set-up").observations();

    private static final String[] WITHIN = {
        "blade", "500000000",
        "orientation", "overslung",
        "conveyor", "Mistral",
        "belt-mark-left", "24 1/8",
        "belt-mark-right", "24 7/16",
        "mount-mark-left", "28 3/8",
        "mount-mark-right", "28 11/16 in",
        "spring-left", "3 13/16",
        "spring-right", "3 13/16",
        "sleeve-left", "1 3/8",
        "sleeve-right", "1 7/16",
        "edge-left", "4",
        "edge-right", "4 1/4",
        "blade-angle", "90",
        "bounce", "even",
        "splice", "3/8",
        "trained", "no"
    };

    private SampleDemonstration() {}

    /** {@return the fields, all within and all seen, but for those named: name, value, name, value} */
    public static String[] within(String... but) {
        List<String> fields = new ArrayList<>(List.of(WITHIN));
        OBSERVATIONS.forEach(one -> fields.addAll(List.of("seen-" + one.id(), "yes")));
        for (int i = 0; i < but.length; i += 2) {
            int at = fields.indexOf(but[i]);
            if (at < 0) {
                fields.addAll(List.of(but[i], but[i + 1]));
            } else {
                fields.set(at + 1, but[i + 1]);
            }
        }
        return fields.toArray(String[]::new);
    }

    /** {@return the page after a supervisor has signed off a person's set-up} */
    public static Reply sign(SampleSite site, String supervisor, String person) {
        return site.signIn(supervisor)
                .get("/sign-off/" + site.personId(person) + RIG)
                .send(within())
                .send("pin", SampleSite.pin());
    }
}
