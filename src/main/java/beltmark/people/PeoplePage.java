package beltmark.people;

import beltmark.web.OperationId;
import beltmark.web.Page;
import beltmark.web.Role;
import beltmark.web.View;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The people somebody looks after, by crew.
 *
 * @param view what all pages share
 * @param crews the crews with people in them
 */
public record PeoplePage(View view, List<CrewRows> crews) implements Page {

    public PeoplePage {
        crews = List.copyOf(crews);
    }

    /**
     * A crew on the page.
     *
     * @param name its name
     * @param people its people
     */
    public record CrewRows(String name, List<Row> people) {
        public CrewRows {
            people = List.copyOf(people);
        }
    }

    /**
     * A person on the page.
     *
     * @param person who
     * @param mayReset whether the reader may reset this person's PIN
     * @param operation names the reset, should it be sent
     */
    public record Row(Person person, boolean mayReset, OperationId operation) {}

    /** {@return whether the reader may change more than PINs} */
    public boolean isAdmin() {
        return view.has(Role.ADMIN);
    }

    /** {@return the roles of a person in words} */
    public String roles(Row row) {
        return row.person().orderedRoles().stream()
                .map(role -> view.text("people.role." + role.word()))
                .collect(Collectors.joining(", "));
    }
}
