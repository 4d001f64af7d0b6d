package beltmark.web;

import beltmark.content.ContentFile;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.Optional;

/**
 * Style sheet, scripts and pictures. Each is served under a name with the hash of its content, so browsers may keep it
 * for ever and still see the next version at once.
 */
public final class Assets {

    private static final int HASH_LETTERS = 12;

    private static final Map<String, String> TYPES = Map.of(
            "css", "text/css; charset=utf-8",
            "js", "text/javascript; charset=utf-8",
            "svg", "image/svg+xml",
            "png", "image/png",
            "woff2", "font/woff2");

    private final Map<String, String> hashedNames = new HashMap<>();
    private final Map<String, Asset> byHashedName = new HashMap<>();

    private Assets() {}

    /** {@return the files of the class path folder {@code static}} */
    public static Assets load() {
        Assets assets = new Assets();
        ContentFile.list("static").forEach(assets::add);
        return assets;
    }

    private void add(ContentFile file) {
        String name = file.name();
        int dot = name.lastIndexOf('.');
        String type = TYPES.get(name.substring(dot + 1));
        if (type == null) {
            throw new IllegalStateException(file.path() + " is of a kind that is not served");
        }
        String hashed = name.substring(0, dot) + "." + hash(file.bytes()) + name.substring(dot);
        hashedNames.put(name, hashed);
        byHashedName.put(hashed, new Asset(type, file.bytes()));
    }

    private static String hash(byte[] bytes) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
            return HexFormat.of().formatHex(digest).substring(0, HASH_LETTERS);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** {@return the address of a file, which must exist} */
    String path(String name) {
        String hashed = hashedNames.get(name);
        if (hashed == null) {
            throw new IllegalStateException("there is no static file " + name);
        }
        return "/static/" + hashed;
    }

    /** {@return a file by its plain name, which must exist; for the few addresses that cannot have a hash in them} */
    public Asset get(String name) {
        return find(path(name).substring("/static/".length())).orElseThrow();
    }

    Optional<Asset> find(String hashedName) {
        return Optional.ofNullable(byHashedName.get(hashedName));
    }

    /**
     * A file as it is sent.
     *
     * @param type its content type
     * @param bytes its content
     */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    public record Asset(String type, byte[] bytes) {}
}
