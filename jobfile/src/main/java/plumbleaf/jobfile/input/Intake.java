package plumbleaf.jobfile.input;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.jobfile.json.JsonReader;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Node.Member;
import plumbleaf.jobfile.json.Node.ObjectNode;
import plumbleaf.jobfile.json.Place;

/**
 * What has come in so far while one file is read: its errors, the values nobody gave, the keys that are known. Reading never stops at
 * the first error.
 */
public final class Intake {
    public static final int LARGEST_BYTES = 32 * 1024 * 1024;
    private static final int MOST_ERRORS = 500;
    private static final Comparator<InputError> IN_FILE_ORDER =
            Comparator.comparingInt(InputError::line).thenComparingInt(InputError::column);

    private final String file;
    private final List<InputError> errors = new ArrayList<>();
    private final List<LeftOut> leftOut = new ArrayList<>();
    private final List<Gap> gaps = new ArrayList<>();
    private final List<Fields> opened = new ArrayList<>();
    private final Map<String, Set<String>> known = new TreeMap<>();
    private boolean draft;
    private int notKept;

    /** A value that nobody gave and that was assumed: where it belongs, what was taken, and what that rests on. */
    public record LeftOut(String field, String value, String why) {}

    /** A needed value that a draft still lacks: where it belongs and what it is. */
    public record Gap(String field, String what) {}

    public Intake(String file) {
        this.file = file;
    }

    /** Opens a file of bytes; nothing where it is no JSON object, and then the errors say why. */
    public Optional<Fields> open(byte[] bytes) {
        if (bytes.length > LARGEST_BYTES) {
            errors.add(tooLarge(file, bytes.length));
            return Optional.empty();
        }
        return text(bytes).flatMap(this::open);
    }

    /** Opens a text; nothing where it is no JSON object, and then the errors say why. */
    public Optional<Fields> open(String text) {
        return JsonReader.read(text).match(tree -> open(tree.root()), broken -> {
            error(broken.place(), "", "", broken.problem(), broken.cure());
            return Optional.empty();
        });
    }

    /** Opens a tree that was read or made before. */
    public Optional<Fields> open(Node root) {
        doubledKeys(root, "");
        Optional<ObjectNode> object = root.asObject();
        if (object.isEmpty())
            error(
                    root.place(),
                    "",
                    "",
                    "the file holds " + root.what(),
                    "a job is an object: { \"format\": \"plumbleaf-job\", ... }");
        return object.map(is -> new Fields(this, is, "", ""));
    }

    /** The error for a file that is larger than any file of ours, for whoever sees the size before the bytes. */
    public static InputError tooLarge(String file, long bytes) {
        return InputError.ofFile(
                file,
                "the file is " + DecimalText.upTo(bytes / (1024.0 * 1024.0), 1) + " MiB, and 32 MiB is the most",
                "give a job file");
    }

    private Optional<String> text(byte[] bytes) {
        ByteBuffer in = ByteBuffer.wrap(bytes);
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .onUnmappableCharacter(CodingErrorAction.REPORT)
                    .decode(in)
                    .toString();
            return Optional.of(text.startsWith("\ufeff") ? text.substring(1) : text);
        } catch (CharacterCodingException e) {
            int line = 1;
            for (int i = 0; i < in.position(); i++) {
                if (bytes[i] == '\n') line++;
            }
            error(new Place(line, 0), "", "", "this is not UTF-8 text", "save the file as UTF-8");
            return Optional.empty();
        }
    }

    private void doubledKeys(Node node, String path) {
        node.asObject().ifPresent(object -> {
            for (Member member : object.doubled())
                error(member.place(), join(path, member.key()), "", "this key is there twice", "keep one of them");
            for (Member member : object.members()) doubledKeys(member.value(), join(path, member.key()));
        });
        node.asArray().ifPresent(array -> {
            for (int i = 0; i < array.items().size(); i++)
                doubledKeys(array.items().get(i), path + "[" + i + "]");
        });
    }

    static String join(String path, String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    public void error(Place place, String field, String value, String problem, String cure) {
        if (errors.size() >= MOST_ERRORS) notKept++;
        else errors.add(InputError.at(file, place, field, value, problem, cure));
    }

    void opened(Fields fields) {
        opened.add(fields);
    }

    void knows(String pattern, String key) {
        known.computeIfAbsent(pattern, unused -> new TreeSet<>()).add(key);
    }

    void leftOut(String field, String value, String why) {
        leftOut.add(new LeftOut(field, value, why));
    }

    /** From here on a missing needed value is a gap, not an error. */
    public void draft() {
        draft = true;
    }

    public boolean isDraft() {
        return draft;
    }

    void gap(String field, String what) {
        gaps.add(new Gap(field, what));
    }

    /** Every error of the file in the order of its lines; call it once all fields were asked for, since keys nobody asked for are errors. */
    public List<InputError> finish() {
        for (Fields fields : opened) fields.reportUnknownKeys();
        opened.clear();
        List<InputError> all = new ArrayList<>(errors);
        all.sort(IN_FILE_ORDER);
        if (notKept > 0)
            all.add(InputError.ofFile(file, "there are " + notKept + " more errors", "put these right first"));
        return List.copyOf(all);
    }

    public List<LeftOut> leftOut() {
        return List.copyOf(leftOut);
    }

    public List<Gap> gaps() {
        return List.copyOf(gaps);
    }

    /** The keys that were asked for, by the object they belong to: {@code gates[].leaf} to {@code bottomGap, shape ...}. */
    public Map<String, Set<String>> known() {
        Map<String, Set<String>> copy = new TreeMap<>();
        known.forEach((pattern, keys) -> copy.put(pattern, new LinkedHashSet<>(keys)));
        return copy;
    }
}
