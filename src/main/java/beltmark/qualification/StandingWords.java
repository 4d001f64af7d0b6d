package beltmark.qualification;

import beltmark.core.qualification.Finding;
import beltmark.core.qualification.Standing;
import beltmark.core.qualification.Status;
import beltmark.core.units.Word;
import beltmark.texts.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Says where somebody stands.
 *
 * @param words the language
 */
public record StandingWords(Words words) {

    /** What stands in a finding as an id, and how the key of its name begins. */
    private static final Map<String, Function<String, String>> NAMED = Map.of(
            "family", id -> "problem.family." + id + ".title",
            "paper", id -> "qualification.paper." + id,
            "qualification", id -> "qualification.name." + id,
            "event", id -> "qualification.event." + id);

    /** {@return the sign that goes before the word of a status} */
    public static String sign(Status status) {
        return switch (status) {
            case IN_TRAINING -> "…";
            case CLEARED -> "✓";
            case DUE_SOON -> "!";
            case LAPSED -> "✕";
            case HELD -> "■";
        };
    }

    /** {@return the name of a qualification} */
    public String name(String qualification) {
        return words.say("qualification.name." + qualification);
    }

    /** {@return the status in one or two words} */
    public String status(Standing standing) {
        return words.say("qualification.status." + standing.status().id());
    }

    /** {@return until when, since when no longer, or since when held; empty when there is nothing to date} */
    public String day(Standing standing) {
        if (standing.status() == Status.HELD) {
            return say("qualification.since", standing.reasons().get(0));
        }
        String key = standing.status().isValid() ? "qualification.until" : "qualification.ended";
        return standing.findLastDay()
                .map(last -> words.say(key, Map.of("day", words.day(last))))
                .orElse("");
    }

    /** {@return why, one sentence each} */
    public List<String> reasons(Standing standing) {
        return standing.reasons().stream()
                .map(finding -> say("qualification.reason." + finding.reason().id(), finding))
                .toList();
    }

    /** {@return what to do next} */
    public String next(Standing standing) {
        return say(
                "qualification.step." + standing.next().id(), standing.reasons().get(0));
    }

    private String say(String key, Finding finding) {
        Map<String, Object> values = new HashMap<>(finding.values());
        NAMED.forEach((name, toKey) -> values.computeIfPresent(name, (same, id) -> new Word(toKey.apply((String) id))));
        return words.say(key, values);
    }
}
