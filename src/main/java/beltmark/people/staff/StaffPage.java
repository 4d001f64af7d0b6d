package beltmark.people.staff;

import beltmark.people.Crew;
import beltmark.people.Membership;
import beltmark.web.OperationId;
import beltmark.web.Option;
import beltmark.web.Page;
import beltmark.web.Role;
import beltmark.web.View;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Somebody, as an admin sees and changes it.
 *
 * @param view what all pages share
 * @param member who
 * @param crews every crew there is
 * @param today the day at the site
 * @param operation names the next change
 * @param refused what was refused, null when nothing was
 */
public record StaffPage(
        View view,
        StaffMember member,
        List<Crew> crews,
        LocalDate today,
        OperationId operation,
        @Nullable Refused refused)
        implements Page {

    public StaffPage {
        crews = List.copyOf(crews);
    }

    /**
     * A change that was not made.
     *
     * @param form which form: {@code move}, {@code roles}, {@code leave} or {@code return}
     * @param sentence why not
     * @param day what was typed as the day
     */
    public record Refused(String form, String sentence, String day) {}

    /** {@return why that form was refused, null when it was not} */
    public @Nullable String error(String form) {
        return refused != null && refused.form().equals(form) ? refused.sentence() : null;
    }

    /** {@return the day in the form as it was typed, else today} */
    public String day(String form) {
        return refused != null && refused.form().equals(form) ? refused.day() : today.toString();
    }

    /** {@return the crews somebody can be put into} */
    public List<Option> crewOptions() {
        return crews.stream()
                .filter(crew -> !member.here() || !crew.equals(member.crew()))
                .map(crew -> new Option(Long.toString(crew.id()), crew.name()))
                .toList();
    }

    /** {@return the roles there are} */
    public List<Option> roleOptions() {
        return Role.ofPeople().stream()
                .map(role -> new Option(role.word(), view.text("people.role." + role.word())))
                .toList();
    }

    /** {@return whether the person has the role of that word} */
    public boolean has(String word) {
        return member.roles().contains(Role.of(word));
    }

    /** {@return whether the reader is this person, who cannot change that by their own hand} */
    public boolean isOwn() {
        return view.visitor() != null && view.visitor().personId() == member.id();
    }

    /** {@return from when to when somebody was in a crew} */
    public String span(Membership membership) {
        Optional<String> from = membership.findFrom().map(view.words()::day);
        Optional<String> to = membership.findTo().map(view.words()::day);
        if (to.isEmpty()) {
            return from.map(day -> view.text("staff.span.since", "from", day))
                    .orElseGet(() -> view.text("staff.span.ever"));
        }
        return from.map(day -> view.text("staff.span.between", "from", day, "to", to.get()))
                .orElseGet(() -> view.text("staff.span.until", "to", to.get()));
    }
}
