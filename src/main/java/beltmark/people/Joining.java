package beltmark.people;

import beltmark.people.PinStore.StoredPin;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import org.jdbi.v3.core.Handle;

/** Puts people on the site: their row, their crew from a day on, and a PIN. */
public final class Joining {

    private final Pins pins;
    private final PersonStore people = new PersonStore();
    private final PinStore pinStore = new PinStore();
    private final CrewAt crews = new CrewAt();

    /** @param pins how PINs are hashed */
    public Joining(Pins pins) {
        this.pins = pins;
    }

    /** {@return that many PINs, each good for one sign-in; made one after another, so that sign-ins get their turn} */
    public CompletableFuture<List<NewPin>> freshPins(int count) {
        CompletableFuture<List<NewPin>> made = CompletableFuture.completedFuture(new ArrayList<>());
        for (int i = 0; i < count; i++) {
            made = made.thenCompose(before -> freshPin().thenApply(pin -> {
                before.add(pin);
                return before;
            }));
        }
        return made;
    }

    private CompletableFuture<NewPin> freshPin() {
        String pin = PinRules.random();
        return pins.hash(pin, true).thenApply(stored -> new NewPin(pin, stored));
    }

    /** {@return a PIN that the person chose and need not change} */
    public CompletableFuture<NewPin> chosenPin(String pin) {
        return pins.hash(pin, false).thenApply(stored -> new NewPin(pin, stored));
    }

    /** {@return the number of somebody who is on the site from now on, within a change} */
    public long join(Handle handle, Newcomer newcomer, long crewId, LocalDate from, NewPin pin) {
        return join(handle, newcomer, crewId, from, pin.stored());
    }

    long join(Handle handle, Newcomer newcomer, long crewId, LocalDate from, StoredPin pin) {
        long id = people.addPerson(handle, newcomer, crewId);
        crews.join(handle, id, crewId, from);
        pinStore.set(handle, id, pin);
        return id;
    }

    /** Gives a PIN to somebody who is on the site, within a change. */
    public void givePin(Handle handle, long personId, NewPin pin) {
        pinStore.set(handle, personId, pin.stored());
    }
}
