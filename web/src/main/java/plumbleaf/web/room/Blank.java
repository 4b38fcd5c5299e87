package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.web.page.Unit;

/**
 * One blank of a form that writes something down.
 *
 * @param key where it goes in the item: {@code from}, {@code arc.radius}, {@code legs[].length} for the one leg of a list; {@link #ITSELF} where the item is this one word
 */
record Blank(String key, String label, Kind kind) {
    /** The item is no object but this word alone. */
    static final String ITSELF = "itself";

    private static final Pattern FIGURE = Pattern.compile("-?\\d{1,7}(\\.\\d{1,4})?");

    /** What is typed into a blank, and how a job file holds it. */
    enum Kind {
        DATE("date", ""),
        WORDS("text", ""),
        PICKED("text", ""),
        /** A word, or nothing where nobody knows. */
        MAYBE("text", ""),
        /** True, or nothing. */
        YES("text", ""),
        NUMBER("text", ""),
        MONEY("text", "dollars"),
        SHARE("text", "%"),
        FEET("text", "ft"),
        INCHES("text", "in"),
        DEGREES("text", "deg"),
        TURN("text", "90 deg left"),
        /** A tape and the side it goes to. */
        SIDED("text", "50' 3\" left"),
        EDITS("text", "builds.G1.hingePost=F1083-REG-3; one after the other with a semicolon"),
        ROWS("textarea", "id,name,pin_offset_in,pin_swing_side_in,capacity_pair_lb,source"),
        /** A point file. */
        LINES("textarea", "101, 5012.40, 1207.15, 512.30, corner"),
        /** Which column holds what. */
        ORDER("text", "found out; or PNEZD"),
        IDS("text", "S4, S7, S9"),
        POINTS("textarea", "east, north\n0', 12'\n40', 12'");

        private final String input;
        private final String hint;

        Kind(String input, String hint) {
            this.input = input;
            this.hint = hint;
        }

        /** As a browser's input knows it. */
        String input() {
            return input;
        }

        /** What may stand there. */
        String hint(DisplayUnits units) {
            boolean length = this == FEET || this == INCHES;
            return length ? unit().in(units).shown() : hint;
        }

        /** The unit a length takes, as {@link Unit} names it; empty for anything else. */
        String lengthIn(DisplayUnits units) {
            return unit().isLength() ? unit().in(units).name() : "";
        }

        boolean isPicked() {
            return this == PICKED || this == MAYBE || this == YES;
        }

        /** Several values in one blank: they are shown as words, not as a field. */
        boolean isMany() {
            return this == EDITS || this == ROWS || this == IDS || this == POINTS;
        }

        /** What a bare number takes, as in a field of its own. */
        Unit unit() {
            return switch (this) {
                case FEET -> Unit.FEET;
                case INCHES -> Unit.INCHES;
                case DEGREES -> Unit.DEGREES;
                case SHARE -> Unit.PERCENT;
                case NUMBER, YES -> Unit.COUNT;
                case DATE, WORDS, PICKED, MAYBE, MONEY, TURN, SIDED, LINES, ORDER, EDITS, ROWS, IDS, POINTS ->
                    Unit.WORDS;
            };
        }

        private String json(String value, DisplayUnits units) {
            return switch (this) {
                case DATE, WORDS, PICKED, MAYBE, TURN, SIDED, LINES, ORDER -> DocumentText.quoted(value);
                case YES -> value.equals("true") ? value : DocumentText.quoted(value);
                case NUMBER -> FIGURE.matcher(value).matches() ? value : DocumentText.quoted(value);
                case MONEY -> DocumentText.quoted(dollars(value));
                case SHARE -> DocumentText.quoted(value.endsWith("%") ? value : value + "%");
                case FEET, INCHES, DEGREES ->
                    DocumentText.quoted(unit().in(units).complete(value));
                case EDITS -> texts(value.split("[;\\n]", -1));
                case IDS -> texts(value.split("[,;\\s]+", -1));
                case ROWS -> rows(value);
                case POINTS -> points(value, units);
            };
        }
    }

    /** An item of a list as JSON: what was typed, and nothing where nothing was. */
    static String item(List<Blank> blanks, Map<String, String> typed, String id, DisplayUnits units) {
        Map<String, List<String>> objects = new LinkedHashMap<>();
        List<String> members = new ArrayList<>();
        if (!id.isEmpty()) members.add("\"id\": " + DocumentText.quoted(id));
        for (Blank blank : blanks) {
            String value = typed.getOrDefault(blank.key(), "").strip();
            if (blank.key().equals(ITSELF)) return blank.kind().json(value, units);
            if (value.isEmpty()) continue;
            int dot = blank.key().indexOf('.');
            String member = DocumentText.quoted(blank.key().substring(dot + 1)) + ": "
                    + blank.kind().json(value, units);
            if (dot < 0) members.add(member);
            else
                objects.computeIfAbsent(blank.key().substring(0, dot), key -> new ArrayList<>())
                        .add(member);
        }
        objects.forEach((key, inside) -> members.add(nested(key, inside)));
        return object(members);
    }

    /** {@code arc} is an object; {@code legs[]} a list with one. */
    private static String nested(String key, List<String> inside) {
        return key.endsWith("[]")
                ? DocumentText.quoted(key.substring(0, key.length() - 2)) + ": [" + object(inside) + "]"
                : DocumentText.quoted(key) + ": " + object(inside);
    }

    private static String object(List<String> members) {
        return "{ " + String.join(", ", members) + " }";
    }

    private static String dollars(String value) {
        if (value.contains("$")) return value;
        return value.startsWith("-") ? "-$" + value.substring(1) : "$" + value;
    }

    private static String texts(String[] parts) {
        List<String> texts = new ArrayList<>();
        for (String part : parts) if (!part.isBlank()) texts.add(DocumentText.quoted(part.strip()));
        return "[" + String.join(", ", texts) + "]";
    }

    private static String rows(String value) {
        List<String> rows = new ArrayList<>();
        for (String row : value.split("\\R", -1))
            if (!row.isBlank() && !row.startsWith("#")) rows.add(DocumentText.quoted(row.strip()));
        return "[" + String.join(", ", rows) + "]";
    }

    /** A point a line, east before north; what has no comma is kept whole, for the job's reader to refuse with its place. */
    private static String points(String value, DisplayUnits units) {
        List<String> points = new ArrayList<>();
        for (String line : value.split("\\R", -1)) {
            if (line.isBlank()) continue;
            int comma = line.indexOf(',');
            String east = comma < 0 ? line : line.substring(0, comma);
            String north = comma < 0 ? "" : line.substring(comma + 1);
            List<String> members = new ArrayList<>();
            members.add("\"east\": " + DocumentText.quoted(Unit.FEET.in(units).complete(east)));
            if (!north.isBlank())
                members.add(
                        "\"north\": " + DocumentText.quoted(Unit.FEET.in(units).complete(north)));
            points.add(object(members));
        }
        return "[" + String.join(", ", points) + "]";
    }
}
