package plumbleaf.web.archive;

import java.io.BufferedReader;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.sql.SQLException;
import java.util.Enumeration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.jspecify.annotations.Nullable;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Node.ObjectNode;

/**
 * A {@link SealedZip} opened for reading. Opening reads all of it once: every entry must be listed and be what the list says, to the
 * byte, and no larger than its packed size allows; else nothing of it is taken.
 */
final class Unsealed implements Closeable {
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_.-]{1,80}(/[A-Za-z0-9_.-]{1,80}){0,4}");
    private static final int MOST_ENTRIES = 2_000_000;
    private static final int LARGEST_MANIFEST = 256 * 1024 * 1024;
    private static final int LARGEST_ENTRY_IN_MEMORY = 64 * 1024 * 1024;
    /** Text of ours packs to a tenth; a file that unpacks to two hundred times its size is a trap. */
    private static final long MOST_UNPACKING = 200;

    private static final long ALWAYS_ALLOWED = 1024L * 1024;

    private final ZipFile zip;
    private final ObjectNode manifest;
    private final Map<String, SealedZip.Entry> entries;

    private Unsealed(ZipFile zip, ObjectNode manifest, Map<String, SealedZip.Entry> entries) {
        this.zip = zip;
        this.manifest = manifest;
        this.entries = entries;
    }

    /** @param format that the manifest must name */
    static Unsealed open(Path file, String format) {
        ZipFile zip = null;
        try {
            zip = new ZipFile(file.toFile(), StandardCharsets.UTF_8);
            ObjectNode manifest = manifest(zip);
            if (!manifest.get("format").flatMap(Node::asText).equals(Optional.of(format)))
                throw new NotTaken("this is not a " + format + " file");
            Map<String, SealedZip.Entry> entries = listed(manifest);
            long allowed = ALWAYS_ALLOWED + MOST_UNPACKING * Files.size(file);
            checkAll(zip, entries, allowed);
            return new Unsealed(zip, manifest, entries);
        } catch (IOException | IllegalArgumentException e) {
            close(zip);
            throw new NotTaken("this file is not whole, or not what it should be", e);
        } catch (NotTaken e) {
            close(zip);
            throw e;
        }
    }

    private static void close(@Nullable ZipFile zip) {
        try {
            if (zip != null) zip.close();
        } catch (IOException e) {
            throw new NotTaken("this file cannot be read", e);
        }
    }

    private static ObjectNode manifest(ZipFile zip) throws IOException {
        byte[] bytes = small(zip, SealedZip.MANIFEST, LARGEST_MANIFEST);
        String seal = new String(small(zip, SealedZip.SEAL, 64), StandardCharsets.UTF_8);
        if (!seal.equals(SealedZip.hex(SealedZip.digest().digest(bytes))))
            throw new NotTaken("its list of contents was changed or damaged");
        return object(text(bytes));
    }

    private static byte[] small(ZipFile zip, String name, int most) throws IOException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) throw new NotTaken("it has no " + name + ", so it is none of ours or not whole");
        try (InputStream in = zip.getInputStream(entry)) {
            byte[] bytes = in.readNBytes(most + 1);
            if (bytes.length > most) throw new NotTaken("its " + name + " is too large");
            return bytes;
        }
    }

    private static Map<String, SealedZip.Entry> listed(ObjectNode manifest) {
        Map<String, SealedZip.Entry> entries = new LinkedHashMap<>();
        List<Node> items = manifest.get("entries")
                .flatMap(Node::asArray)
                .map(Node.ArrayNode::items)
                .orElseThrow(() -> new NotTaken("its list of contents is missing"));
        if (items.size() > MOST_ENTRIES) throw new NotTaken("it has too many entries");
        for (Node item : items) {
            ObjectNode entry = item.asObject().orElseThrow(() -> new NotTaken("its list of contents is damaged"));
            String name = Rows.text(entry, "name");
            if (!NAME.matcher(name).matches() || name.contains(".."))
                throw new NotTaken("it has an entry with a name that is not allowed");
            SealedZip.Entry listed = new SealedZip.Entry(name, Rows.number(entry, "size"), Rows.text(entry, "sha256"));
            if (entries.put(name, listed) != null) throw new NotTaken("it lists " + name + " twice");
        }
        return entries;
    }

    private static void checkAll(ZipFile zip, Map<String, SealedZip.Entry> entries, long allowed) throws IOException {
        long left = allowed;
        for (SealedZip.Entry listed : entries.values()) {
            ZipEntry entry = zip.getEntry(listed.name());
            if (entry == null) throw new NotTaken("it should have " + listed.name() + " and has not");
            MessageDigest digest = SealedZip.digest();
            long size = 0;
            byte[] buffer = new byte[1 << 16];
            try (InputStream in = zip.getInputStream(entry)) {
                for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
                    size += n;
                    left -= n;
                    if (size > listed.size() || left < 0) throw new NotTaken("it unpacks to more than it may");
                    digest.update(buffer, 0, n);
                }
            }
            if (size != listed.size() || !SealedZip.hex(digest.digest()).equals(listed.digest()))
                throw new NotTaken(listed.name() + " in it was changed or damaged");
        }
        int found = 0;
        for (Enumeration<? extends ZipEntry> all = zip.entries(); all.hasMoreElements(); all.nextElement()) found++;
        if (found != entries.size() + 2) throw new NotTaken("it holds more than it lists");
    }

    ObjectNode manifest() {
        return manifest;
    }

    List<String> names() {
        return List.copyOf(entries.keySet());
    }

    byte[] bytes(String name) {
        SealedZip.Entry listed = entries.get(name);
        if (listed == null) throw new NotTaken("it should have " + name + " and has not");
        if (listed.size() > LARGEST_ENTRY_IN_MEMORY) throw new NotTaken(name + " in it is too large");
        try (InputStream in = zip.getInputStream(zip.getEntry(name))) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new NotTaken(name + " in it cannot be read", e);
        }
    }

    /** What reads one line. */
    interface Line {
        void read(String line) throws SQLException;
    }

    void lines(String name, Line use) throws SQLException {
        if (!entries.containsKey(name)) throw new NotTaken("it should have " + name + " and has not");
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                zip.getInputStream(zip.getEntry(name)),
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT)))) {
            for (String line = in.readLine(); line != null; line = in.readLine()) use.read(line);
        } catch (IOException e) {
            throw new NotTaken(name + " in it cannot be read", e);
        }
    }

    static String text(byte[] bytes) {
        try {
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            throw new NotTaken("a text in it is not UTF-8", e);
        }
    }

    static ObjectNode object(String json) {
        return JsonReader.read(json)
                .match(tree -> tree.root().asObject(), broken -> Optional.<ObjectNode>empty())
                .filter(object -> object.doubled().isEmpty())
                .orElseThrow(() -> new NotTaken("a part of it is not the JSON it should be"));
    }

    @Override
    public void close() throws IOException {
        zip.close();
    }
}
