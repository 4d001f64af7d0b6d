package beltmark.core.problem.bank.spring;

import java.util.Locale;
import java.util.stream.Stream;

/**
 * What a bounce by hand can show, each with its one remedy. Common practice, no published source; the slowing by more
 * mass or by one spring follows from the bounce frequency.
 */
public enum Finding {
    /** It comes straight back. */
    FREE("bounce-leave"),
    /** Caked material moves along and makes it slow. */
    BUILD_UP("bounce-clean"),
    /** A bushing binds: one end creeps back. */
    BINDS("bounce-true-up"),
    /** It stops hard before the sleeve is used up. */
    BLOCKED("bounce-give-travel"),
    /** One spring is slack: only the other one brings it back. */
    SLACK("bounce-set-springs");

    private final String remedy;

    Finding(String remedy) {
        this.remedy = remedy;
    }

    /** {@return the id of the cause as an option} */
    public String cause() {
        return "bounce-" + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@return the id of the remedy as an option} */
    public String remedy() {
        return remedy;
    }

    /** {@return the finding whose cause is that option; free where there is none} */
    static Finding ofCause(String cause) {
        return Stream.of(values())
                .filter(finding -> finding.cause().equals(cause))
                .findFirst()
                .orElse(FREE);
    }
}
