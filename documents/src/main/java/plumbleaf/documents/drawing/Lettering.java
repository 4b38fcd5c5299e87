package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** Measures and breaks lettering. The same widths rule on screen and in every file, so what fits here fits everywhere. */
public final class Lettering {
    /** Height of a capital of Inter in parts of the size: 1490 of 2048 units. Source: the font's own OS/2 table. */
    public static final double CAPITAL = 1490.0 / 2048;

    /** Room above and below a line of capitals, in heights of a capital. */
    static final double ASCENT = 1.08;

    static final double DESCENT = 0.30;

    private static final char UNKNOWN = '?';

    /** What a number before them goes on with. */
    private static final List<String> UNITS = List.of("mm", "ft", "in.", "lb", "mph", "psf", "psi");

    private Lettering() {}

    /** A stretch of text in one typeface. */
    public record Stretch(Typeface face, String text) {}

    /** Text split by typeface: what Inter lacks comes from DejaVu Sans, and what neither has is a question mark. */
    public static List<Stretch> stretches(String text, Text.Weight weight) {
        Typeface first = weight == Text.Weight.SEMIBOLD ? Typeface.INTER_SEMIBOLD : Typeface.INTER_REGULAR;
        List<Stretch> stretches = new ArrayList<>();
        StringBuilder run = new StringBuilder();
        Typeface running = first;
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            Typeface face = faceOf(letter, first);
            char shown = AdvanceWidths.has(face, letter) ? letter : UNKNOWN;
            if (face != running && run.length() > 0) {
                stretches.add(new Stretch(running, run.toString()));
                run.setLength(0);
            }
            running = face;
            run.append(shown);
        }
        if (run.length() > 0) stretches.add(new Stretch(running, run.toString()));
        return List.copyOf(stretches);
    }

    private static Typeface faceOf(char letter, Typeface first) {
        boolean fallback = !AdvanceWidths.has(first, letter) && AdvanceWidths.has(Typeface.DEJAVU_SANS, letter);
        return fallback ? Typeface.DEJAVU_SANS : first;
    }

    /** Width on paper of a line whose capitals are so high. */
    public static double width(String text, double capitalIn, Text.Weight weight) {
        double units = 0;
        for (Stretch stretch : stretches(text, weight)) units += units(stretch);
        return units / AdvanceWidths.UNITS * capitalIn / CAPITAL;
    }

    /** Width of one stretch whose capitals are so high. */
    public static double width(Stretch stretch, double capitalIn) {
        return units(stretch) / AdvanceWidths.UNITS * capitalIn / CAPITAL;
    }

    private static double units(Stretch stretch) {
        double units = 0;
        for (int i = 0; i < stretch.text().length(); i++)
            units += AdvanceWidths.of(stretch.face(), stretch.text().charAt(i));
        return units;
    }

    /** Breaks at spaces so that no line is wider than the room; a word that is too long alone is cut. */
    public static List<String> wrapped(String text, double roomIn, double capitalIn, Text.Weight weight) {
        List<String> lines = new ArrayList<>();
        for (String paragraph : text.split("\n", -1)) wrapInto(lines, paragraph, roomIn, capitalIn, weight);
        return List.copyOf(lines);
    }

    /** Words in their order, feet with their inches and a number with its unit as one: half a measure at the end of a line is a wrong measure. */
    public static List<String> words(String paragraph) {
        List<String> words = new ArrayList<>();
        for (String word : paragraph.split(" ", -1)) {
            int last = words.size() - 1;
            if (last >= 0 && goOn(words.get(last), word)) words.set(last, words.get(last) + " " + word);
            else words.add(word);
        }
        return List.copyOf(words);
    }

    private static boolean goOn(String before, String word) {
        if (before.isEmpty() || word.isEmpty()) return false;
        int last = before.length() - 1;
        if (isDigit(before.charAt(last))) return isUnit(word);
        return before.charAt(last) == '\'' && last > 0 && isDigit(before.charAt(last - 1)) && isDigit(word.charAt(0));
    }

    private static boolean isDigit(char letter) {
        return letter >= '0' && letter <= '9';
    }

    /** A unit, and what ends a sentence or a bracket after it. */
    private static boolean isUnit(String word) {
        for (String unit : UNITS)
            if (word.startsWith(unit)) {
                int at = unit.length();
                while (at < word.length() && ".,;:)".indexOf(word.charAt(at)) >= 0) at++;
                if (at == word.length()) return true;
            }
        return false;
    }

    /** Where a long word is best cut: after its last hyphen, slash or underscore that fits, else where it must. */
    private static int joint(String word, int most) {
        for (int i = most; i > 1; i--) if ("-/_".indexOf(word.charAt(i - 1)) >= 0) return i;
        return most;
    }

    private static void wrapInto(
            List<String> lines, String paragraph, double roomIn, double capitalIn, Text.Weight weight) {
        String line = "";
        for (String word : words(paragraph)) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (width(longer, capitalIn, weight) <= roomIn) {
                line = longer;
                continue;
            }
            if (!line.isEmpty()) lines.add(line);
            line = word;
            while (line.length() > 1 && width(line, capitalIn, weight) > roomIn) {
                int fits = line.length() - 1;
                while (fits > 1 && width(line.substring(0, fits), capitalIn, weight) > roomIn) fits--;
                int joint = joint(line, fits);
                lines.add(line.substring(0, joint));
                line = line.substring(joint);
            }
        }
        lines.add(line);
    }
}
