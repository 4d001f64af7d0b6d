package beltmark.signoff;

import beltmark.db.Database;
import beltmark.recordbook.Entry;
import beltmark.recordbook.RecordBook;
import beltmark.recordbook.Recorded;
import beltmark.recordbook.StoredEntry;
import beltmark.web.OperationId;
import beltmark.web.Visitor;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.util.HexFormat;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;

/**
 * Photos of what was left, added to a signed record by who signed it. Each is a file under its SHA-256 in the data folder,
 * and a record of its own that names the hash, so that a photo can be checked against the book for ever.
 */
public final class Photos {

    private static final String KIND = "signoff.photo";

    private final Database database;
    private final RecordBook book;
    private final Clock clock;
    private final Path folder;
    private final PhotoStore store = new PhotoStore();

    /**
     * @param database where the records are
     * @param book where they are recorded
     * @param clock the time
     * @param folder where the files are; made when the first one comes
     */
    public Photos(Database database, RecordBook book, Clock clock, Path folder) {
        this.database = database;
        this.book = book;
        this.clock = clock;
        this.folder = folder;
    }

    /**
     * Body of the record.
     *
     * @param of the number of the signed record
     * @param sha256 the hash of the file, in hexadecimal digits
     * @param bytes its length
     */
    public record Taken(long of, String sha256, int bytes) {}

    /** {@return whether it was a photo; then it is on the disk and recorded} */
    CompletableFuture<Boolean> add(Visitor assessor, StoredEntry signed, byte[] sent, OperationId operation) {
        Optional<byte[]> photo = PhotoImage.redrawn(sent);
        if (photo.isEmpty()) {
            return CompletableFuture.completedFuture(false);
        }
        Taken body = new Taken(signed.sequence(), hash(photo.get()), photo.get().length);
        write(body.sha256(), photo.get());
        return database.write(handle -> {
            Entry entry =
                    new Entry(KIND, operation.value(), signed.subject(), assessor.personId(), clock.instant(), body);
            Recorded recorded = book.append(handle, entry);
            if (recorded.isNew()) {
                store.add(handle, recorded.sequence(), signed.sequence(), body.sha256());
            }
            return true;
        });
    }

    /** {@return the hash of the latest photo of a signed record} */
    Optional<String> find(StoredEntry signed) {
        return database.read(handle -> store.find(handle, signed.sequence()));
    }

    /** {@return the latest photo of a signed record; empty when there is none, or its file is not what was recorded} */
    Optional<byte[]> read(StoredEntry signed) {
        return find(signed).flatMap(this::readFile);
    }

    private Optional<byte[]> readFile(String sha256) {
        try {
            byte[] bytes = Files.readAllBytes(file(sha256));
            return hash(bytes).equals(sha256) ? Optional.of(bytes) : Optional.empty();
        } catch (IOException gone) {
            return Optional.empty();
        }
    }

    /** Whole under its name or not there at all; the same photo once more is the same file. */
    private void write(String sha256, byte[] bytes) {
        try {
            Files.createDirectories(folder);
            Path half = Files.createTempFile(folder, "half", ".jpg");
            Files.write(half, bytes);
            Files.move(half, file(sha256), StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path file(String sha256) {
        return folder.resolve(sha256 + ".jpg");
    }

    private static String hash(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
