package plumbleaf.jobfile.json;

import plumbleaf.jobfile.json.Node.ArrayNode;
import plumbleaf.jobfile.json.Node.Member;
import plumbleaf.jobfile.json.Node.ObjectNode;

/**
 * A tree as text, the same bytes for the same tree: keys in their order, two spaces a level, a line feed at the end; an object or list
 * stays on one line where that line has room.
 */
public final class JsonWriter {
    private static final int LINE = 120;

    private final StringBuilder out = new StringBuilder();

    private JsonWriter() {}

    public static String write(Node node) {
        JsonWriter writer = new JsonWriter();
        writer.broken(node, 0, 0);
        return writer.out.append('\n').toString();
    }

    /** Without line breaks or spaces to look at: for one line on a wire. */
    public static String compact(Node node) {
        StringBuilder line = new StringBuilder();
        oneLine(node, line, Integer.MAX_VALUE);
        return line.toString();
    }

    private void broken(Node node, int level, int used) {
        StringBuilder line = new StringBuilder();
        if (level > 0 && oneLine(node, line, LINE - used)) {
            out.append(line);
            return;
        }
        node.match(
                object -> brokenObject(object, level),
                array -> brokenArray(array, level),
                this::scalar,
                this::scalar,
                this::scalar,
                this::scalar);
    }

    private boolean scalar(Node node) {
        return oneLine(node, out, Integer.MAX_VALUE);
    }

    private boolean brokenObject(ObjectNode object, int level) {
        if (object.members().isEmpty()) {
            out.append("{}");
            return true;
        }
        out.append("{");
        String between = "\n";
        for (Member member : object.members()) {
            out.append(between);
            indent(level + 1);
            int from = out.length();
            quote(member.key(), out);
            out.append(": ");
            broken(member.value(), level + 1, 2 * (level + 1) + out.length() - from);
            between = ",\n";
        }
        out.append('\n');
        indent(level);
        out.append('}');
        return true;
    }

    private boolean brokenArray(ArrayNode array, int level) {
        if (array.items().isEmpty()) {
            out.append("[]");
            return true;
        }
        out.append("[");
        String between = "\n";
        for (Node item : array.items()) {
            out.append(between);
            indent(level + 1);
            broken(item, level + 1, 2 * (level + 1));
            between = ",\n";
        }
        out.append('\n');
        indent(level);
        out.append(']');
        return true;
    }

    private void indent(int level) {
        for (int i = 0; i < level; i++) out.append("  ");
    }

    /** Writes on one line; false as soon as that takes more than the room there is. */
    private static boolean oneLine(Node node, StringBuilder line, int room) {
        return node.match(
                object -> {
                    line.append(object.members().isEmpty() ? "{" : "{ ");
                    String between = "";
                    for (Member member : object.members()) {
                        line.append(between);
                        quote(member.key(), line);
                        line.append(": ");
                        if (!oneLine(member.value(), line, room)) return false;
                        between = ", ";
                    }
                    line.append(object.members().isEmpty() ? "}" : " }");
                    return line.length() <= room;
                },
                array -> {
                    line.append('[');
                    String between = "";
                    for (Node item : array.items()) {
                        line.append(between);
                        if (!oneLine(item, line, room)) return false;
                        between = ", ";
                    }
                    line.append(']');
                    return line.length() <= room;
                },
                text -> {
                    quote(text.text(), line);
                    return line.length() <= room;
                },
                number -> {
                    line.append(number.digits());
                    return line.length() <= room;
                },
                flag -> {
                    line.append(flag.is());
                    return line.length() <= room;
                },
                nothing -> {
                    line.append("null");
                    return line.length() <= room;
                });
    }

    /** What needs no escape is written a stretch at a time: a drawing is tens of thousands of letters with few quotes in it. */
    private static void quote(String text, StringBuilder out) {
        out.append('"');
        int from = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (isPlain(c, text, i)) continue;
            out.append(text, from, i);
            escape(c, out);
            from = i + 1;
        }
        out.append(text, from, text.length()).append('"');
    }

    /** Control characters, line separators and halves of a surrogate pair are escaped, so that the output is always valid UTF-8. */
    private static boolean isPlain(char c, String text, int at) {
        if (c >= ' ' && c < '\u007f') return c != '"' && c != '\\';
        if (c <= '\u007f' || c == '\u2028' || c == '\u2029') return false;
        if (Character.isHighSurrogate(c))
            return at + 1 < text.length() && Character.isLowSurrogate(text.charAt(at + 1));
        return !Character.isLowSurrogate(c) || (at > 0 && Character.isHighSurrogate(text.charAt(at - 1)));
    }

    private static void escape(char c, StringBuilder out) {
        switch (c) {
            case '"' -> out.append("\\\"");
            case '\\' -> out.append("\\\\");
            case '\n' -> out.append("\\n");
            case '\r' -> out.append("\\r");
            case '\t' -> out.append("\\t");
            default -> {
                String hex = Integer.toHexString(c);
                out.append("\\u").append("0000", 0, 4 - hex.length()).append(hex);
            }
        }
    }
}
