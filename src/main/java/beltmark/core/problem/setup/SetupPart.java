package beltmark.core.problem.setup;

import beltmark.core.problem.Part;
import beltmark.core.setup.Situation;
import java.util.Optional;
import java.util.stream.Stream;

/** The parts of a set-up, in the order of the job. */
public enum SetupPart {
    /** Read the belt mark off the tape on each side. */
    BELT_MARK("belt-mark"),
    /** Pick which way round the tensioner goes. */
    ORIENTATION("orientation"),
    /** Work out the mount mark on each side. */
    MOUNT_MARK("mount-mark"),
    /** Look up the spring length. */
    SPRING_LENGTH("spring-length"),
    /** Work out the sleeve left exposed for splice relief. */
    SLEEVE("sleeve");

    private final String id;

    SetupPart(String id) {
        this.id = id;
    }

    /** {@return the hyphenated name, the part's id in a problem and in content files} */
    public String id() {
        return id;
    }

    /** {@return the part of that id, if there is one} */
    public static Optional<SetupPart> find(String id) {
        return Stream.of(values()).filter(part -> part.id.equals(id)).findFirst();
    }

    Part pose(Situation situation, SituationRanges ranges) {
        return switch (this) {
            case BELT_MARK -> BeltMarkPart.of(situation, ranges);
            case ORIENTATION -> OrientationPart.of(situation);
            case MOUNT_MARK -> MountMarkPart.of(situation, ranges);
            case SPRING_LENGTH -> SpringLengthPart.of(situation, ranges);
            case SLEEVE -> SleevePart.of(situation, ranges);
        };
    }
}
