package beltmark.ownrecord;

import beltmark.db.Database;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/** All records of a person. */
public final class OwnRecord {

    /** Longer than a paper or a quiz takes: the record of one that is under way names what is still to come. */
    private static final Duration TESTS_SEALED = Duration.ofDays(1);

    private final Database database;
    private final Clock clock;
    private final OwnRecordStore store = new OwnRecordStore();

    public OwnRecord(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /** {@return what a person did and what was decided of them, in the order recorded} */
    List<OwnEntry> list(long personId) {
        Instant open = clock.instant().minus(TESTS_SEALED);
        return database.read(handle -> store.list(handle, personId)).stream()
                .map(entry -> entry.isOfTest() && entry.recordedAt().isAfter(open) ? entry.withoutBody() : entry)
                .toList();
    }
}
