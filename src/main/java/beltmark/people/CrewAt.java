package beltmark.people;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** Who was in which crew on a day, and the changes to that. Whoever changes it writes the record in the same change. */
public final class CrewAt {

    private final MembershipStore store = new MembershipStore();

    /** {@return the crew somebody was in on that day, empty before joining and after leaving} */
    public Optional<Crew> find(Handle handle, long personId, LocalDate date) {
        return store.findAt(handle, personId, date).map(Membership::crew);
    }

    /** {@return who was in a crew on that day, by the number of the person} */
    public List<Membership> listCrew(Handle handle, long crewId, LocalDate date) {
        return store.listCrewAt(handle, crewId, date);
    }

    /** {@return all the crews somebody was in, the first one first} */
    public List<Membership> list(Handle handle, long personId) {
        return store.list(handle, personId);
    }

    /** Begins a membership of somebody who is in no crew. */
    public void join(Handle handle, long personId, long crewId, LocalDate from) {
        store.add(handle, personId, crewId, from, null);
        store.setCrew(handle, personId);
    }

    /** Somebody who is in a crew on that day is in another one from then on, until the next change that is on record. */
    public void move(Handle handle, long personId, long crewId, LocalDate from) {
        Membership changed = store.findAt(handle, personId, from)
                .orElseThrow(() -> new IllegalStateException("person " + personId + " is in no crew on " + from));
        store.endBefore(handle, personId, from);
        store.add(handle, personId, crewId, from, changed.to());
        store.setCrew(handle, personId);
    }

    /** Somebody is in no crew from that day on, which is not before the last membership began. */
    public void leave(Handle handle, long personId, LocalDate on) {
        store.endLast(handle, personId, on);
    }
}
