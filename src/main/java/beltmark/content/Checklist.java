package beltmark.content;

import beltmark.core.finish.FinishLimits;
import java.util.List;

/**
 * What a supervisor watches while a job is shown in the field, and what the readings at its end are held to.
 *
 * @param id hyphenated name of the job
 * @param version counts up with every change
 * @param observations what is watched for, in the order of the job
 * @param limits what the readings at the blade are held to
 */
public record Checklist(String id, int version, List<Observation> observations, FinishLimits limits) {

    public Checklist {
        observations = List.copyOf(observations);
    }

    /**
     * One thing to watch for.
     *
     * @param id the hyphenated name its text is under
     * @param critical whether the demonstration is not passed when this was not seen, or seen not to be done
     */
    public record Observation(String id, boolean critical) {}
}
