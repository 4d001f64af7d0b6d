package beltmark.people;

import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The statements on PINs and their counters. */
final class PinStore {

    /** A locked PIN is not taken a try from, so the counter never passes 10. */
    private static final String TAKE_TRY =
            "UPDATE people_pin SET tries = tries + 1 WHERE person_id = :person AND tries < 10";

    private static final String FIND = """
            SELECT hash, must_change FROM people_pin
            WHERE person_id = :person AND person_id IN (SELECT id FROM people_person WHERE active = 1)""";

    /** Only for the PIN that was compared: it may have been reset meanwhile. */
    private static final String GIVE_TRIES_BACK =
            "UPDATE people_pin SET tries = 0 WHERE person_id = :person AND hash = :hash";

    private static final String IS_KEPT =
            "SELECT EXISTS (SELECT 1 FROM people_pin WHERE person_id = :person AND hash = :hash)";

    private static final String SET = """
            INSERT INTO people_pin (person_id, hash, tries, must_change) VALUES (:person, :hash, 0, :mustChange)
            ON CONFLICT (person_id) DO UPDATE SET hash = excluded.hash, tries = 0, must_change = excluded.must_change""";

    private static final String COUNT_TRIES = "SELECT tries FROM people_pin WHERE person_id = :person";

    /** {@return the PIN to compare with, after one try was taken for it; empty when there is none or it is locked} */
    Optional<StoredPin> takeTry(Handle handle, long personId) {
        int taken = handle.createUpdate(TAKE_TRY).bind("person", personId).execute();
        return taken == 0
                ? Optional.empty()
                : handle.createQuery(FIND)
                        .bind("person", personId)
                        .map((row, context) -> new StoredPin(row.getString("hash"), row.getBoolean("must_change")))
                        .findOne();
    }

    void giveTriesBack(Handle handle, long personId, StoredPin pin) {
        handle.createUpdate(GIVE_TRIES_BACK)
                .bind("person", personId)
                .bind("hash", pin.hash())
                .execute();
    }

    /** {@return whether a PIN is still the one that was compared; it may have been reset meanwhile} */
    boolean isKept(Handle handle, long personId, String hash) {
        return handle.createQuery(IS_KEPT)
                .bind("person", personId)
                .bind("hash", hash)
                .mapTo(Boolean.class)
                .one();
    }

    void set(Handle handle, long personId, StoredPin pin) {
        handle.createUpdate(SET)
                .bind("person", personId)
                .bind("hash", pin.hash())
                .bind("mustChange", pin.mustChange())
                .execute();
    }

    int countTries(Handle handle, long personId) {
        return handle.createQuery(COUNT_TRIES)
                .bind("person", personId)
                .mapTo(Integer.class)
                .findOne()
                .orElse(0);
    }

    /**
     * A PIN as it is kept.
     *
     * @param hash see {@link PinHash}
     * @param mustChange whether somebody else gave it out
     */
    record StoredPin(String hash, boolean mustChange) {}
}
