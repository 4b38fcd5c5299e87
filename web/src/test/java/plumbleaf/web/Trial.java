package plumbleaf.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Objects;

/** What the workspace's tests share: a small yard, and a store of their own below the build's folder. */
public final class Trial {
    private Trial() {}

    public static String yard() {
        try (InputStream file = Objects.requireNonNull(Trial.class.getResourceAsStream("yard.json"))) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file in a new folder. */
    public static String store() {
        try {
            Path target = Files.createDirectories(Path.of("target", "stores"));
            return Files.createTempDirectory(target, "store").resolve("jobs.db").toString();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The smallest of photos. */
    public static byte[] pixel() {
        return Base64.getDecoder()
                .decode(
                        "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");
    }
}
