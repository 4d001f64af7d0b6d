package beltmark.content;

import java.util.List;
import java.util.stream.Collectors;

/** The start is refused because content files are wrong; carries every fault found, not only the first. */
public final class ContentFaults extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient List<ContentFault> faults;

    /** @param faults at least one fault */
    public ContentFaults(List<ContentFault> faults) {
        super(faults.stream()
                .map(ContentFault::toString)
                .collect(Collectors.joining("\n", faults.size() + " faults in content files:\n", "")));
        this.faults = List.copyOf(faults);
    }

    /** {@return every fault, in the order of the files} */
    public List<ContentFault> faults() {
        return faults;
    }
}
