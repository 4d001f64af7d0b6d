package beltmark.signoff;

import java.util.Optional;
import org.jdbi.v3.core.Handle;

/** The statements on photos. */
final class PhotoStore {

    private static final String ADD = "INSERT INTO signoff_photo (seq, of_seq, sha256) VALUES (:seq, :of, :sha256)";

    private static final String FIND = "SELECT sha256 FROM signoff_photo WHERE of_seq = :of ORDER BY seq DESC LIMIT 1";

    void add(Handle handle, long sequence, long of, String sha256) {
        handle.createUpdate(ADD)
                .bind("seq", sequence)
                .bind("of", of)
                .bind("sha256", sha256)
                .execute();
    }

    /** {@return the hash of the latest photo of a signed record} */
    Optional<String> find(Handle handle, long of) {
        return handle.createQuery(FIND).bind("of", of).mapTo(String.class).findOne();
    }
}
