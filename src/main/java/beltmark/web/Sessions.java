package beltmark.web;

import java.util.Optional;

/** Finds who is behind a session token; the people feature keeps the sessions. */
@FunctionalInterface
public interface Sessions {

    /** {@return the person of a living session, empty for an unknown, ended or expired one} */
    Optional<Visitor> find(String token);
}
