package beltmark.recordbook;

/** The operation id belongs to another kind of record or to another person: a forged or mixed-up form. */
public final class OperationTaken extends RuntimeException {

    private static final long serialVersionUID = 1;

    OperationTaken(Entry entry, long sequence) {
        super("the operation of this " + entry.kind() + " by person " + entry.actor() + " belongs to record "
                + sequence);
    }
}
