package beltmark.jobcheck;

import beltmark.core.qualification.Standing;
import java.util.List;

/**
 * One person, checked for a job.
 *
 * @param member who
 * @param standings where the person will stand with each qualification that is needed, in the order asked for
 * @param lapsing the qualifications that the person has today and will no longer have on the day
 */
public record Checked(Member member, List<For> standings, List<String> lapsing) {

    public Checked {
        standings = List.copyOf(standings);
        lapsing = List.copyOf(lapsing);
    }

    /**
     * A standing with a qualification.
     *
     * @param qualification its id
     * @param standing on the day of the job
     */
    public record For(String qualification, Standing standing) {}

    /** {@return whether the person could take any place} */
    public boolean canGo() {
        return standings.stream().anyMatch(one -> one.standing().status().isValid());
    }
}
