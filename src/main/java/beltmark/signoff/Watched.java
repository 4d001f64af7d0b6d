package beltmark.signoff;

import beltmark.content.Checklist;
import beltmark.content.Checklist.Observation;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What was watched, each observation answered.
 *
 * @param checklist what was watched for
 * @param answers what is said of each observation, by its id
 */
public record Watched(Checklist checklist, Map<String, Seen> answers) {

    public Watched {
        answers = Map.copyOf(answers);
    }

    /** {@return everything seen done, as it is when all goes well} */
    public static Watched allSeen(Checklist checklist) {
        return new Watched(
                checklist,
                checklist.observations().stream().collect(Collectors.toMap(Observation::id, seen -> Seen.YES)));
    }

    Seen answer(Observation observation) {
        return answers.getOrDefault(observation.id(), Seen.NOT_SEEN);
    }

    /** {@return the critical observations without a yes, for which the demonstration is not passed} */
    List<Observation> missed() {
        return checklist.observations().stream()
                .filter(one -> one.critical() && answer(one) != Seen.YES)
                .toList();
    }

    boolean isPassed() {
        return missed().isEmpty();
    }
}
