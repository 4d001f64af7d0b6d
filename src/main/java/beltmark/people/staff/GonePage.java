package beltmark.people.staff;

import beltmark.web.Page;
import beltmark.web.View;
import java.util.List;

/**
 * Those who have left.
 *
 * @param view what all pages share
 * @param people who, by name
 */
public record GonePage(View view, List<StaffMember> people) implements Page {

    public GonePage {
        people = List.copyOf(people);
    }
}
