package beltmark.review;

import java.time.Instant;
import org.jspecify.annotations.Nullable;

/**
 * Where a person stands with the quiz.
 *
 * @param person the person's name
 * @param crew the name of the crew
 * @param isOpen whether a sitting waits to be finished
 * @param last the last finished sitting, null before the first
 * @param passedAt when the quiz was last passed, null if never
 * @param critical how many critical questions that person has ever missed
 */
record Standing(
        String person,
        String crew,
        boolean isOpen,
        @Nullable Last last,
        @Nullable Instant passedAt,
        int critical) {

    /**
     * A person's last finished sitting.
     *
     * @param sitting its number
     * @param right how many questions were right
     * @param asked how many there were
     * @param passed whether it was passed
     * @param finishedAt when it was finished
     */
    record Last(long sitting, int right, int asked, boolean passed, Instant finishedAt) {}
}
