package beltmark.keys;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.EnumSet;
import java.util.Set;

/** The folder of key files: made on first use, refused when others may read it. */
public final class KeyFolder {

    /** Bytes of a key: as many as the output of HMAC-SHA-256, for which all of them are used. */
    private static final int KEY_BYTES = 32;

    private static final Set<PosixFilePermission> OWNER_ONLY = EnumSet.of(
            PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE, PosixFilePermission.OWNER_EXECUTE);

    private final Path folder;

    private KeyFolder(Path folder) {
        this.folder = folder;
    }

    /** {@return the folder {@code keys} of a data folder; both are made when missing} */
    public static KeyFolder in(Path dataFolder) {
        Path folder = dataFolder.resolve("keys");
        try {
            if (!Files.isDirectory(folder)) {
                Files.createDirectories(dataFolder);
                Files.createDirectory(folder, ownerOnly(dataFolder, "rwx------"));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        refuseLoose(folder);
        return new KeyFolder(folder);
    }

    /** {@return the key of that name, the same at every start; random the first time} */
    public byte[] key(String name) {
        Path file = folder.resolve(name);
        try {
            if (!Files.exists(file)) {
                write(file);
            }
            refuseLoose(file);
            byte[] key = Files.readAllBytes(file);
            if (key.length != KEY_BYTES) {
                throw new IllegalStateException(file + " has " + key.length + " bytes and not " + KEY_BYTES);
            }
            return key;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(Path file) throws IOException {
        byte[] key = new byte[KEY_BYTES];
        new SecureRandom().nextBytes(key);
        try (var channel = Files.newByteChannel(
                file,
                Set.of(StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE, StandardOpenOption.SYNC),
                ownerOnly(file, "rw-------"))) {
            channel.write(java.nio.ByteBuffer.wrap(key));
        } catch (FileAlreadyExistsException e) {
            // another start of the server was first; its key is as good
        }
    }

    private static FileAttribute<?>[] ownerOnly(Path path, String permissions) {
        return isPosix(path)
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
                }
                : new FileAttribute<?>[0];
    }

    private static void refuseLoose(Path path) {
        try {
            if (isPosix(path) && !OWNER_ONLY.containsAll(Files.getPosixFilePermissions(path))) {
                throw new IllegalStateException(path + " can be read by others; take their permissions away first");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static boolean isPosix(Path path) {
        return Files.getFileAttributeView(path.toAbsolutePath().getParent(), PosixFileAttributeView.class) != null;
    }
}
