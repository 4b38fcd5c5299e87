package plumbleaf.jobfile.input;

import plumbleaf.jobfile.json.Json;
import plumbleaf.jobfile.json.Node;
import plumbleaf.jobfile.json.Place;

/**
 * One thing wrong in something read, and how to put it right.
 *
 * @param file as the user named it
 * @param line counted from 1; 0 when no line is meant
 * @param column counted from 1; 0 when none is meant
 * @param field {@code gates[0].opening}; empty when the file as a whole is meant
 * @param value the text found; empty when there is none to show
 * @param problem half a sentence: {@code a length needs its unit}
 * @param cure what to do: {@code write 50" or 4' 2"}
 */
public record InputError(String file, int line, int column, String field, String value, String problem, String cure) {
    private static final int LONGEST_SHOWN = 60;

    public static InputError ofFile(String file, String problem, String cure) {
        return new InputError(file, 0, 0, "", "", problem, cure);
    }

    public static InputError at(String file, Place place, String field, String value, String problem, String cure) {
        return new InputError(file, place.line(), place.column(), field, value, problem, cure);
    }

    /** One line: {@code yard.json:14: gates[0].opening "50": a length needs its unit; write 50" or 4' 2"}. */
    public String text() {
        StringBuilder out = new StringBuilder(file);
        if (line > 0) out.append(':').append(line);
        return out.append(": ").append(said()).toString();
    }

    /** The same without the file and the line, where the reader has what is wrong before them. */
    public String said() {
        StringBuilder out = new StringBuilder();
        if (!field.isEmpty()) {
            out.append(shown(field));
            if (!value.isEmpty()) out.append(" \"").append(shown(value)).append('"');
            out.append(": ");
        }
        out.append(problem);
        if (!cure.isEmpty()) out.append("; ").append(cure);
        return out.toString();
    }

    /** With every part under its own key, for a program. */
    public Node json() {
        return Json.object()
                .put("file", file)
                .put("line", line)
                .put("column", column)
                .put("field", field)
                .put("value", value)
                .put("problem", problem)
                .put("cure", cure)
                .build();
    }

    /** At most 60 characters and none that would break the line or steer a terminal. */
    static String shown(String text) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < text.length() && i < LONGEST_SHOWN; i++) {
            char c = text.charAt(i);
            boolean plain = c >= ' ' && (c < '\u007f' || c > '\u009f') && !Character.isSurrogate(c);
            out.append(plain ? c : '?');
        }
        if (text.length() > LONGEST_SHOWN) out.append("...");
        return out.toString();
    }
}
