package beltmark.people;

import beltmark.people.PinStore.StoredPin;

/** A PIN that is to be somebody's: as a person knows it, and as it is kept. */
public final class NewPin {

    private final String pin;
    private final StoredPin stored;

    NewPin(String pin, StoredPin stored) {
        this.pin = pin;
        this.stored = stored;
    }

    /** {@return six digits} */
    public String pin() {
        return pin;
    }

    StoredPin stored() {
        return stored;
    }
}
