package beltmark.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A file shipped with the program.
 *
 * @param path its path below the class path root, such as {@code content/texts/en/web.yaml}
 * @param bytes what is in it; not to be changed
 */
@SuppressWarnings("ArrayRecordComponent") // compared by nobody; copied from the jar once at start
public record ContentFile(String path, byte[] bytes) {

    /** {@return the content as UTF-8 text} */
    public String text() {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** {@return the last part of the path} */
    public String name() {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    /**
     * Lists the files below a folder of the class path, the same from the jar and from the build folder.
     *
     * @param folder such as {@code content/texts}; may be missing
     * @return all regular files below it, ordered by path
     */
    public static List<ContentFile> list(String folder) {
        URL found = ContentFile.class.getResource("/" + folder);
        if (found == null) {
            return List.of();
        }
        try {
            return "jar".equals(found.getProtocol())
                    ? listJar(found.toURI(), folder)
                    : walk(Path.of(found.toURI()), folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException("class path folder " + folder, e);
        }
    }

    private static List<ContentFile> listJar(URI uri, String folder) throws IOException {
        try (FileSystem jar = FileSystems.newFileSystem(uri, Map.of())) {
            return walk(jar.getPath("/" + folder), folder);
        }
    }

    /** {@return the regular files below a folder of any file system, with paths that begin with the given name} */
    public static List<ContentFile> walk(Path root, String name) throws IOException {
        try (Stream<Path> paths = Files.walk(root)) {
            return paths.filter(Files::isRegularFile)
                    .sorted()
                    .map(path -> read(root, path, name))
                    .toList();
        }
    }

    private static ContentFile read(Path root, Path path, String name) {
        try {
            String below = root.relativize(path).toString().replace('\\', '/');
            return new ContentFile(name + "/" + below, Files.readAllBytes(path));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
