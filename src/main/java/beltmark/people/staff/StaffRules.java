package beltmark.people.staff;

import beltmark.people.Crew;
import beltmark.people.CrewAt;
import beltmark.people.Membership;
import beltmark.web.NotFound;
import beltmark.web.Role;
import java.time.Clock;
import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** What stands against a change; empty when nothing does. */
final class StaffRules {

    private final Clock clock;
    private final CrewAt crews = new CrewAt();
    private final StaffStore store = new StaffStore();

    StaffRules(Clock clock) {
        this.clock = clock;
    }

    Optional<StaffRefusal> findMoveFault(Handle handle, StaffChange change, Crew to) {
        getHere(handle, change);
        Optional<StaffRefusal> dayFault = findDayFault(change);
        if (dayFault.isPresent()) {
            return dayFault;
        }
        Optional<Crew> before = crews.find(handle, change.person(), change.getDay());
        if (before.isEmpty()) {
            return Optional.of(StaffRefusal.NOT_HERE_THEN);
        }
        if (before.get().equals(to)) {
            return Optional.of(StaffRefusal.SAME_CREW);
        }
        return findNamesake(handle, change, to);
    }

    Optional<StaffRefusal> findRolesFault(Handle handle, StaffChange change, Set<Role> roles) {
        getHere(handle, change);
        if (roles.isEmpty()) {
            return Optional.of(StaffRefusal.NO_ROLE);
        }
        return change.isOwn() ? Optional.of(StaffRefusal.YOURSELF) : Optional.empty();
    }

    Optional<StaffRefusal> findLeavingFault(Handle handle, StaffChange change) {
        getHere(handle, change);
        Optional<StaffRefusal> dayFault = change.isOwn() ? Optional.of(StaffRefusal.YOURSELF) : findDayFault(change);
        if (dayFault.isPresent()) {
            return dayFault;
        }
        boolean begunByThen = crews.list(handle, change.person()).stream()
                .noneMatch(membership -> membership.from().isAfter(change.getDay()));
        return begunByThen ? Optional.empty() : Optional.of(StaffRefusal.MOVED_LATER);
    }

    Optional<StaffRefusal> findReturnFault(Handle handle, StaffChange change, Crew to) {
        Optional<StaffRefusal> dayFault = findDayFault(change);
        if (dayFault.isPresent()) {
            return dayFault;
        }
        boolean goneByThen = !store.get(handle, change.person()).here()
                && crews.list(handle, change.person()).stream()
                        .allMatch(membership -> hasEnded(membership, change.getDay()));
        return goneByThen ? findNamesake(handle, change, to) : Optional.of(StaffRefusal.NOT_LEFT_THEN);
    }

    private static boolean hasEnded(Membership membership, LocalDate day) {
        return membership.findTo().map(to -> !to.isAfter(day)).orElse(false);
    }

    private Optional<StaffRefusal> findNamesake(Handle handle, StaffChange change, Crew to) {
        return store.hasNamesake(handle, change.person(), to.id())
                ? Optional.of(StaffRefusal.SAME_NAME)
                : Optional.empty();
    }

    private Optional<StaffRefusal> findDayFault(StaffChange change) {
        if (change.day().isEmpty()) {
            return Optional.of(StaffRefusal.NO_DAY);
        }
        return change.getDay().isAfter(LocalDate.now(clock)) ? Optional.of(StaffRefusal.FUTURE_DAY) : Optional.empty();
    }

    private void getHere(Handle handle, StaffChange change) {
        if (!store.get(handle, change.person()).here()) {
            throw new NotFound("person " + change.person() + " has left");
        }
    }
}
