package plumbleaf.web.fieldbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The page's own files and the engine beside them. The worker that keeps them on a device is told their list and one number for all of them. */
final class BookFiles {
    private static final String MODULE = "engine.packed";

    private static final String OWN = "/plumbleaf/web/fieldbook/";
    private static final String ENGINE = "/plumbleaf/browser/";
    private static final List<String> OF_THE_BOOK = List.of(
            "page.html",
            "book.css",
            "book.js",
            "held.js",
            "measuring.js",
            "keys.js",
            "sketch.js",
            "dragging.js",
            "sender.js",
            "naming.js",
            "edits.js",
            "book.webmanifest",
            "icon.svg",
            "worker.js");
    private static final List<String> OF_THE_ENGINE = List.of("engine.js", "unpack.js", "odds.js", MODULE);

    /** What the page uses of the rooms'. */
    private static final List<String> SHARED = List.of(
            "/assets/plumbleaf.css", "/assets/queue.js", "/assets/fonts/inter-latin-wght-normal.woff2", "/drawing.css");

    private final Map<String, byte[]> files = new LinkedHashMap<>();

    BookFiles() {
        for (String name : OF_THE_BOOK) files.put(name, read(OWN + name).orElseThrow());
        for (String name : OF_THE_ENGINE) read(ENGINE + name).ifPresent(bytes -> files.put(name, bytes));
        files.put("worker.js", worker());
    }

    /** Nothing where there is no such file, or where this workspace was put together without the engine for a browser. */
    Optional<byte[]> find(String name) {
        return name.equals("page.html") ? Optional.empty() : Optional.ofNullable(files.get(name));
    }

    byte[] text(String name) {
        return find(name).orElseGet(() -> files.getOrDefault(name, new byte[0]));
    }

    static String kindOf(String name) {
        return switch (name.substring(name.lastIndexOf('.') + 1)) {
            case "js" -> "text/javascript;charset=UTF-8";
            case "css" -> "text/css;charset=UTF-8";
            case "svg" -> "image/svg+xml";
            case "webmanifest" -> "application/manifest+json";
            default -> "application/octet-stream";
        };
    }

    private byte[] worker() {
        StringBuilder list = new StringBuilder("\"/field-book/\"");
        for (String name : files.keySet())
            if (!name.equals("page.html") && !name.equals("worker.js"))
                list.append(", \"/field-book/").append(name).append('"');
        for (String name : SHARED) list.append(", \"").append(name).append('"');
        return new String(files.getOrDefault("worker.js", new byte[0]), StandardCharsets.UTF_8)
                .replace("\"@files@\"", list)
                .replace("@version@", digest())
                .getBytes(StandardCharsets.UTF_8);
    }

    /** Of the shared ones too: a page that is kept goes with the styles it was made with. */
    private String digest() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (byte[] bytes : files.values()) digest.update(bytes);
            for (String name : SHARED)
                read(name.replace("/assets/", "/plumbleaf/web/assets/")).ifPresent(digest::update);
            return HexFormat.of().formatHex(digest.digest(), 0, 8);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    private static Optional<byte[]> read(String path) {
        try (InputStream in = BookFiles.class.getResourceAsStream(path)) {
            return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException("The field book's " + path + " cannot be read", e);
        }
    }
}
