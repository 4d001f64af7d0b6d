package beltmark.people;

import beltmark.people.PinStore.StoredPin;

/** A PIN for somebody's first sign-in: as it is told to them once, and as it is kept. */
public final class OneTimePin {

    private final String pin;
    private final StoredPin stored;

    OneTimePin(String pin, StoredPin stored) {
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
