package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.LengthText;

/** A part filled in field by field: a table of one row, with the headings that a maker's sheet had a word for. */
final class OwnPartEntry {
    /** How the forms name their lists. */
    static final String LIST = "parts+";

    /** Headings that tell which kind of part it is. */
    private static final List<String> TELLING =
            List.of("pin_offset_in", "tolerance_in", "yield_psi", "standoff_in", "wall_in");

    /** Decimals of an inch: a hundredth of a millimeter is kept. */
    private static final int FINEST = 5;

    private OwnPartEntry() {}

    /**
     * What was typed for a length and is none, with its label. The table's reader would take it for inches where it finds a number in it, whatever the screen shows.
     */
    static List<String> noLengths(List<Blank> blanks, Map<String, String> typed, DisplayUnits units) {
        List<String> wrong = new ArrayList<>();
        for (Blank blank : blanks) {
            String value = typed.getOrDefault(blank.key(), "").strip();
            if (value.isEmpty() || blank.kind() != Blank.Kind.INCHES) continue;
            String refused = LengthText.offsetOnScreen(value, units)
                    .match(read -> "", no -> blank.label() + ": " + no.problem() + "; " + no.cure() + ".");
            if (!refused.isEmpty()) wrong.add(refused);
        }
        return wrong;
    }

    /** An item of {@code parts}: what was left empty is left to what is taken for it, or unknown. */
    static String item(List<Blank> blanks, Map<String, String> typed, DisplayUnits units) {
        List<String> headings = new ArrayList<>();
        List<String> values = new ArrayList<>();
        String id = "part";
        for (Blank blank : blanks) {
            String value = typed.getOrDefault(blank.key(), "").strip();
            if (blank.key().equals("id") && !value.isEmpty()) id = value;
            boolean tells = blank.key().equals("id")
                    || blank.key().equals("name")
                    || blank.key().equals("source");
            if (value.isEmpty() && !tells && !isTelling(blank.key())) continue;
            headings.add(blank.key());
            values.add(cell(blank.kind() == Blank.Kind.INCHES ? inches(value, units) : value));
        }
        return "{ \"file\": " + DocumentText.quoted(id + ".csv") + ", \"rows\": ["
                + DocumentText.quoted(String.join(",", headings)) + ", "
                + DocumentText.quoted(String.join(",", values)) + "] }";
    }

    /** The heading that says which kind of part it is stays, so that what is missing is named. */
    private static boolean isTelling(String key) {
        return TELLING.contains(key);
    }

    /** As the table has its lengths, in decimal inches; an empty one stays empty, for the reader to name. */
    private static String inches(String value, DisplayUnits units) {
        return LengthText.offsetOnScreen(value, units)
                .value()
                .map(is -> DecimalText.upTo(is.inches(), FINEST))
                .orElse(value);
    }

    private static String cell(String value) {
        boolean plain = !value.contains(",") && !value.contains("\"");
        return plain ? value : "\"" + value.replace("\"", "\"\"") + "\"";
    }
}
