package plumbleaf.jobfile.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Which column holds what: P point, N northing, E easting, Z elevation, D description.
 *
 * @param letters such as {@code PNEZD}
 */
public record ColumnOrder(String letters) {
    static final String LETTERS = "PNEZD";

    /** An order as people write it, where it holds N, E and Z once each and P and D at most once. */
    public static Optional<ColumnOrder> of(String text) {
        String letters = text.strip().toUpperCase(Locale.ROOT).replace(",", "").replace(" ", "");
        for (int i = 0; i < letters.length(); i++) {
            char letter = letters.charAt(i);
            if (LETTERS.indexOf(letter) < 0 || letters.indexOf(letter) != i) return Optional.empty();
        }
        boolean places = letters.contains("N") && letters.contains("E") && letters.contains("Z");
        return places ? Optional.of(new ColumnOrder(letters)) : Optional.empty();
    }

    /** The order that a heading tells, where every place has its name in it. */
    static Optional<ColumnOrder> ofHeading(List<String> cells) {
        StringBuilder letters = new StringBuilder();
        for (String cell : cells) {
            int unit = cell.indexOf('(');
            String word = unit > 0 ? cell.substring(0, unit) : cell;
            letters.append(letterOf(word.strip().toLowerCase(Locale.ROOT)));
        }
        return of(letters.toString());
    }

    private static String letterOf(String word) {
        if (word.startsWith("north") || word.equals("n") || word.equals("y")) return "N";
        if (word.startsWith("east") || word.equals("e") || word.equals("x")) return "E";
        if (word.startsWith("elev") || word.equals("z") || word.startsWith("height")) return "Z";
        if (word.startsWith("desc") || word.startsWith("code") || word.startsWith("note") || word.equals("d"))
            return "D";
        return "P";
    }

    /** The usual order for lines of so many cells: with three, no point names. */
    static ColumnOrder usual(int cells) {
        if (cells <= 3) return new ColumnOrder("NEZ");
        return new ColumnOrder(cells == 4 ? "PNEZ" : "PNEZD");
    }

    /** Where a letter stands; -1 where it does not. */
    int at(char letter) {
        return letters.indexOf(letter);
    }

    /** With commas, as people write it: {@code P,N,E,Z,D}. */
    public String text() {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < letters.length(); i++) parts.add(letters.substring(i, i + 1));
        return String.join(",", parts);
    }
}
