package beltmark.web;

import io.javalin.security.RouteRole;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** Who may use a route. A person has one or more of the job roles; a route without roles is refused for everybody. */
public enum Role implements RouteRole {
    /** Everybody, also without sign-in. For routes only. */
    ANYONE,
    /** Everybody who is signed in. For routes only. */
    SIGNED_IN,
    /** Learns the job. */
    NEW_HIRE,
    /** Leads a crew and signs off its people. */
    SUPERVISOR,
    /** Looks after the training on hazardous energy. */
    COORDINATOR,
    /** Looks after problems and hardware cards. */
    TRAINER,
    /** Looks after people and the machine. */
    ADMIN;

    /** {@return the role as it is written in text keys, data files and the database} */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@return the role of that word; refuses any other text} */
    public static Role of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** {@return several roles as they are kept together: their words in the order declared, with a blank between} */
    public static String words(Collection<Role> roles) {
        return roles.stream().sorted().map(Role::word).collect(Collectors.joining(" "));
    }

    /** {@return the roles of such a text} */
    public static Set<Role> ofWords(String words) {
        return Arrays.stream(words.split(" ", -1))
                .filter(word -> !word.isEmpty())
                .map(Role::of)
                .collect(Collectors.toUnmodifiableSet());
    }

    /** {@return the roles that a person can have, which routes alone cannot} */
    public static Set<Role> ofPeople() {
        return EnumSet.range(NEW_HIRE, ADMIN);
    }
}
