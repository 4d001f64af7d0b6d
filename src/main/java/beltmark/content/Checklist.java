package beltmark.content;

import java.util.List;

/**
 * What a supervisor watches while a job is shown in the field.
 *
 * @param id hyphenated name of the job
 * @param version counts up with every change
 * @param observations what must have been seen, each by the hyphenated name its text is under
 */
public record Checklist(String id, int version, List<String> observations) {

    public Checklist {
        observations = List.copyOf(observations);
    }
}
