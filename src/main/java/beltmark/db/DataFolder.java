package beltmark.db;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The folder with everything a server keeps, readable by its owner only and locked for as long as it is open. */
final class DataFolder implements AutoCloseable {

    /** SQLite's log works by shared memory, which these do not have between machines. */
    private static final Set<String> NETWORK_SHARES =
            Set.of("nfs", "nfs4", "cifs", "smb2", "smb3", "smbfs", "afs", "fuse.sshfs");

    private static final boolean POSIX =
            FileSystems.getDefault().supportedFileAttributeViews().contains("posix");

    private final Path folder;
    private final FileChannel lock;

    private DataFolder(Path folder, FileChannel lock) {
        this.folder = folder;
        this.lock = lock;
    }

    static DataFolder open(Path folder) {
        try {
            Files.createDirectories(folder, ownerOnly("rwx------"));
            requireLocal(folder);
            DataFolder opened = new DataFolder(folder, lock(folder));
            // SQLite gives its log and shared memory the mode of the database file
            createOwnerOnly(databaseFile(folder));
            unpackDriverInto(folder);
            return opened;
        } catch (IOException e) {
            throw new CannotOpen("The data folder " + folder + " cannot be used: " + e, e);
        }
    }

    static Path databaseFile(Path folder) {
        return folder.resolve("beltmark.db");
    }

    Path databaseFile() {
        return databaseFile(folder);
    }

    /** The driver unpacks its library at the first connection; a shared temporary folder may be full or not executable. */
    private static void unpackDriverInto(Path folder) throws IOException {
        if (System.getProperty("org.sqlite.tmpdir") == null) {
            Path driver = Files.createDirectories(folder.resolve("driver"), ownerOnly("rwx------"));
            System.setProperty("org.sqlite.tmpdir", driver.toAbsolutePath().toString());
        }
    }

    private static void requireLocal(Path folder) throws IOException {
        String type = Files.getFileStore(folder).type();
        if (NETWORK_SHARES.contains(type)) {
            throw new CannotOpen(
                    "The data folder " + folder + " is on a network share (" + type
                            + "), where records could be lost. Choose a folder on a disk of this machine.",
                    null);
        }
    }

    private static FileChannel lock(Path folder) throws IOException {
        Path file = folder.resolve("beltmark.lock");
        createOwnerOnly(file);
        FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE);
        if (tryLock(channel) == null) {
            channel.close();
            throw new CannotOpen(
                    "The data folder " + folder
                            + " is in use by another Beltmark server. Stop that one, or choose another folder.",
                    null);
        }
        return channel;
    }

    private static @Nullable FileLock tryLock(FileChannel channel) throws IOException {
        try {
            return channel.tryLock();
        } catch (OverlappingFileLockException sameProcess) {
            return null;
        }
    }

    private static void createOwnerOnly(Path file) throws IOException {
        try {
            Files.createFile(file, ownerOnly("rw-------"));
        } catch (FileAlreadyExistsException alreadyThere) {
            // left as its owner set it
        }
    }

    private static FileAttribute<?>[] ownerOnly(String mode) {
        return POSIX
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(mode))}
                : new FileAttribute<?>[0];
    }

    @Override
    public void close() {
        try {
            lock.close();
        } catch (IOException e) {
            throw new IllegalStateException("the lock of " + folder + " could not be given back", e);
        }
    }
}
