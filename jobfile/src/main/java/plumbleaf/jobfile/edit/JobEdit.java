package plumbleaf.jobfile.edit;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import plumbleaf.engine.quantity.Parsed;
import plumbleaf.engine.quantity.Parsed.Read;
import plumbleaf.engine.quantity.Parsed.Refused;
import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.NodePath;

/**
 * One change: {@code gates[G1].hinge=left}. A bare whole number is set as a number, {@code true} and {@code false} as flags, anything else as text; nothing after
 * the sign takes the value out.
 */
public record JobEdit(String path, String value) {
    private static final Pattern PATH =
            Pattern.compile("[A-Za-z][A-Za-z0-9-]*(\\[[A-Za-z0-9.-]{1,20}]|\\.[A-Za-z][A-Za-z0-9-]*(?:\\.[0-9]+)?)*");
    private static final Pattern COUNT = Pattern.compile("0|[1-9][0-9]{0,8}");
    private static final int LONGEST = 400;

    public static Parsed<JobEdit> read(String text) {
        int sign = text.indexOf('=');
        if (sign < 1 || text.length() > LONGEST)
            return new Refused<>(
                    "this is not a change to a job", "write a path, =, and the value: builds.G1.hingePost=F1083-REG-3");
        String path = text.substring(0, sign).strip();
        if (!PATH.matcher(path).matches())
            return new Refused<>(
                    "there is no such place in a job file",
                    "write keys with dots, items by id: gates[G1].leaf.bottomGap");
        return new Read<>(new JobEdit(path, text.substring(sign + 1).strip()));
    }

    public String text() {
        return path + "=" + value;
    }

    /** The tree with the changes made in order; what is wrong with one where its place is not in this job. */
    public static Parsed<Node> all(Node root, List<JobEdit> edits) {
        Node changed = root;
        for (JobEdit edit : edits) {
            Optional<Node> next = edit.on(changed);
            if (next.isEmpty())
                return new Refused<>(
                        "there is no " + edit.path() + " in this job", "name a thing by its id in the file");
            changed = next.get();
        }
        return new Read<>(changed);
    }

    private Optional<Node> on(Node root) {
        NodePath way = NodePath.of(path);
        try {
            return Optional.of(value.isEmpty() ? way.remove(root) : way.set(root, node()));
        } catch (IllegalArgumentException noSuchPlace) {
            return Optional.empty();
        }
    }

    private Node node() {
        if (COUNT.matcher(value).matches()) return Json.count(Long.parseLong(value));
        if (value.equals("true") || value.equals("false")) return Json.flag(value.equals("true"));
        return Json.text(value);
    }
}
