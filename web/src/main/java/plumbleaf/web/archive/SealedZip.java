package plumbleaf.web.archive;

import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.JsonWriter;
import plumbleaf.jobfile.json.Node;

/**
 * A zip file whose last two entries say what every other one must be: {@code manifest.json} with the size and SHA-256 of each, and the
 * SHA-256 of the manifest. It stands under its name only when it is whole and on disk. The same content makes the same bytes.
 */
final class SealedZip implements Closeable {
    static final String MANIFEST = "manifest.json";
    static final String SEAL = "manifest.sha256";

    private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

    private final Path file;
    private final Path half;
    private final ZipOutputStream zip;
    private final List<Entry> entries = new ArrayList<>();
    private boolean sealed;

    record Entry(String name, long size, String digest) {
        Node json() {
            return Json.object()
                    .put("name", name)
                    .put("size", Json.count(size))
                    .put("sha256", digest)
                    .build();
        }
    }

    SealedZip(Path file) throws IOException {
        this.file = file.toAbsolutePath();
        this.half = this.file.resolveSibling("." + this.file.getFileName() + ".part");
        this.zip = new ZipOutputStream(new BufferedOutputStream(Files.newOutputStream(half)), StandardCharsets.UTF_8);
    }

    /** What fills one entry. */
    interface Filling {
        void into(OutputStream out) throws IOException;
    }

    void put(String name, Filling filling) throws IOException {
        Counted counted = new Counted(zip);
        zip.putNextEntry(entry(name));
        filling.into(counted);
        zip.closeEntry();
        entries.add(new Entry(name, counted.size, counted.digest()));
    }

    void put(String name, byte[] bytes) throws IOException {
        put(name, out -> out.write(bytes));
    }

    /** Closes the list, syncs, and gives the file its name. */
    void seal(Json.Members head) throws IOException {
        byte[] manifest = JsonWriter.write(
                        head.put("entries", entries, Entry::json).build())
                .getBytes(StandardCharsets.UTF_8);
        zip.putNextEntry(entry(MANIFEST));
        zip.write(manifest);
        zip.closeEntry();
        zip.putNextEntry(entry(SEAL));
        zip.write(hex(digest().digest(manifest)).getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
        zip.close();
        try (FileChannel channel = FileChannel.open(half, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
        Files.move(half, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        sealed = true;
    }

    @Override
    public void close() throws IOException {
        if (sealed) return;
        try {
            zip.close();
        } catch (IOException halfWritten) {
            // It is deleted next.
        }
        Files.deleteIfExists(half);
    }

    private static ZipEntry entry(String name) {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(NO_TIME);
        return entry;
    }

    static MessageDigest digest() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    static String hex(byte[] bytes) {
        return HexFormat.of().formatHex(bytes);
    }

    /** Counts and digests what passes. */
    private static final class Counted extends OutputStream {
        private final OutputStream to;
        private final MessageDigest digest = SealedZip.digest();
        private long size;

        Counted(OutputStream to) {
            this.to = to;
        }

        @Override
        public void write(int one) throws IOException {
            write(new byte[] {(byte) one}, 0, 1);
        }

        @Override
        public void write(byte[] bytes, int from, int count) throws IOException {
            to.write(bytes, from, count);
            digest.update(bytes, from, count);
            size += count;
        }

        String digest() {
            return hex(digest.digest());
        }
    }
}
