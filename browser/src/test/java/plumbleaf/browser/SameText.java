package plumbleaf.browser;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Two texts that must say the same: letter for letter, but for numbers that stand bare in JSON, which may part beyond the ninth digit. A force
 * that is nothing, beside one of hundreds of pounds in the same object, is measured by that one.
 */
final class SameText {
    /** Sines are the browser's own there and may differ in their last digit; relative, or absolute below 1. */
    private static final double CLOSE = 1e-9;

    private static final Pattern BARE = Pattern.compile("(?<=[\\s\\[,])-?\\d+(?:\\.\\d+)?(?=[,\\s\\]}])");

    private SameText() {}

    /** Where they differ, in a few words; empty where they do not. */
    static Optional<String> difference(String here, String there) {
        if (here.equals(there)) return Optional.empty();
        boolean json = isJson(here) && isJson(there);
        String[] ours = (json ? spread(here) : here).split("\n", -1);
        String[] theirs = (json ? spread(there) : there).split("\n", -1);
        for (int i = 0; i < Math.min(ours.length, theirs.length); i++)
            if (!ours[i].equals(theirs[i]) && !same(ours[i], theirs[i], beside(ours, i)))
                return Optional.of("line " + (i + 1) + ": \"" + ours[i].strip() + "\" here, \"" + theirs[i].strip()
                        + "\" in the browser");
        return ours.length == theirs.length
                ? Optional.empty()
                : Optional.of(ours.length + " lines here, " + theirs.length + " in the browser");
    }

    private static boolean isJson(String text) {
        return text.startsWith("{") || text.startsWith("[");
    }

    /** One value a line: how a text is broken into lines depends on how many digits its numbers have, and says nothing. */
    static String spread(String json) {
        StringBuilder lines = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < json.length(); i++) {
            char c = json.charAt(i);
            if (quoted) {
                lines.append(c);
                if (c == '\\') lines.append(json.charAt(++i));
                else if (c == '"') quoted = false;
            } else if (c == '"') {
                quoted = true;
                lines.append(c);
            } else if (c == '{' || c == '[' || c == ',') lines.append(c).append("\n ");
            else if (c == '}' || c == ']') lines.append('\n').append(c);
            else if (c == ':') lines.append(": ");
            else if (c > ' ') lines.append(c);
        }
        return lines.toString();
    }

    /** The largest number of the object that a line stands in, and 1 at least. */
    private static double beside(String[] lines, int at) {
        int from = at;
        while (from > 0 && !opens(lines[from - 1])) from--;
        double largest = 1;
        for (int i = from; i < lines.length && !closes(lines[i]); i++) {
            Matcher number = BARE.matcher(lines[i] + "\n");
            while (number.find()) largest = Math.max(largest, Math.abs(Double.parseDouble(number.group())));
        }
        return largest;
    }

    private static boolean opens(String line) {
        return line.endsWith("{") || line.endsWith("[");
    }

    private static boolean closes(String line) {
        String bare = line.strip();
        return bare.startsWith("}") || bare.startsWith("]");
    }

    private static boolean same(String one, String two, double beside) {
        Matcher ours = BARE.matcher(one + "\n");
        Matcher theirs = BARE.matcher(two + "\n");
        StringBuilder frame = new StringBuilder();
        int from = 0;
        int fromTheirs = 0;
        while (ours.find()) {
            if (!theirs.find()
                    || !isClose(Double.parseDouble(ours.group()), Double.parseDouble(theirs.group()), beside))
                return false;
            if (!one.substring(from, ours.start()).equals(two.substring(fromTheirs, theirs.start()))) return false;
            from = ours.end();
            fromTheirs = theirs.end();
            frame.append('#');
        }
        return !frame.isEmpty() && one.substring(from).equals(two.substring(fromTheirs));
    }

    private static boolean isClose(double a, double b, double beside) {
        return Math.abs(a - b) <= CLOSE * Math.max(beside, Math.max(Math.abs(a), Math.abs(b)));
    }
}
