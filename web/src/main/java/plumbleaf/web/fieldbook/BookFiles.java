package plumbleaf.web.fieldbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumbleaf.documents.plot.svg.SvgStyle;

/** The page's own files and the engine beside them. The worker that keeps them on a device is told their list, each with its sum, and one number for all of them. */
public final class BookFiles {
    private static final String MODULE = "engine.packed";
    private static final String STYLE = "/drawing.css";

    private static final String OWN = "/plumbleaf/web/fieldbook/";
    private static final String ENGINE = "/plumbleaf/browser/";
    private static final List<String> OF_THE_BOOK = List.of(
            "page.html",
            "book.css",
            "book.js",
            "openjob.js",
            "held.js",
            "measuring.js",
            "keys.js",
            "sketch.js",
            "numbers.js",
            "findings.js",
            "drawings.js",
            "figures.js",
            "dragging.js",
            "crew.js",
            "desk.js",
            "words.js",
            "waiting.js",
            "sender.js",
            "naming.js",
            "edits.js",
            "book.webmanifest",
            "icon.svg",
            "worker.js");

    /** All that is fetched to work out a job: the packed engine, what unpacks it, and the scripts that run both. */
    public static final List<String> OF_THE_ENGINE =
            List.of("beside.js", "thread.js", "engine.js", "unpack.js", "unpack.wasm", MODULE);

    /** What the page uses of the rooms'. */
    private static final List<String> SHARED =
            List.of("/assets/plumbleaf.css", "/assets/queue.js", "/assets/fonts/inter-latin-wght-normal.woff2", STYLE);

    private static final int MAKE_DIGITS = 16;

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
            case "wasm" -> "application/wasm";
            case "webmanifest" -> "application/manifest+json";
            default -> "application/octet-stream";
        };
    }

    private byte[] worker() {
        List<String> list = new ArrayList<>();
        list.add(listed("/field-book/", sum(files.getOrDefault("page.html", new byte[0]))));
        for (Map.Entry<String, byte[]> file : files.entrySet())
            if (!file.getKey().equals("page.html") && !file.getKey().equals("worker.js"))
                list.add(listed("/field-book/" + file.getKey(), sum(file.getValue())));
        for (String name : SHARED) list.add(listed(name, sum(shared(name))));
        String all = String.join(", ", list);
        byte[] own = files.getOrDefault("worker.js", new byte[0]);
        String make = sum((sum(own) + all).getBytes(StandardCharsets.UTF_8)).substring(0, MAKE_DIGITS);
        return new String(own, StandardCharsets.UTF_8)
                .replace("\"@files@\"", all)
                .replace("@version@", make)
                .getBytes(StandardCharsets.UTF_8);
    }

    private static String listed(String path, String sum) {
        return "[\"" + path + "\", \"" + sum + "\"]";
    }

    /** Of the shared ones too: a page that is kept goes with the styles it was made with. */
    private static byte[] shared(String path) {
        if (path.equals(STYLE)) return SvgStyle.forPages().getBytes(StandardCharsets.UTF_8);
        return read(path.replace("/assets/", "/plumbleaf/web/assets/")).orElseThrow();
    }

    private static String sum(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
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
