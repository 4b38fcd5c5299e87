package plumbleaf.browser.pattern;

import java.util.ArrayList;
import java.util.List;

/**
 * Makes a pattern's text into steps. Knows single characters, {@code .}, {@code \d \w \s \R \b}, sets in brackets, {@code $}, groups, ways parted by {@code |}, what looks ahead or
 * a known way back, and {@code * + ?} and counts in braces, greedy or not. Everything else is refused.
 */
final class PatternReader {
    private static final int SINGLE = 2;
    private static final String DIGITS = "09";
    private static final String WORDS = "09AZ__az";
    private static final String SPACES = "\t\r  ";
    private static final String LINE_ENDS = "\n\n\r\r\u0085\u0085\u2028\u2029";
    private static final String BREAKS = "\n\r\u0085\u0085\u2028\u2029";

    private final String text;
    private final boolean anyCase;
    private final List<String> sets = new ArrayList<>();
    private int groups = 0;
    private int at = 0;

    PatternReader(String text, boolean anyCase) {
        this.text = text;
        this.anyCase = anyCase;
    }

    /** Steps, and how many characters they take at least. */
    private record Part(String steps, int least) {}

    String steps() {
        String steps = ways().steps() + Step.DONE;
        if (at < text.length()) throw unknown();
        if (steps.length() > Short.MAX_VALUE) throw new IllegalArgumentException("Too long a pattern: " + text);
        return steps;
    }

    List<String> sets() {
        return sets;
    }

    int groups() {
        return groups;
    }

    private IllegalArgumentException unknown() {
        return new IllegalArgumentException("Patterns in a page know nothing of what stands at " + at + " in " + text);
    }

    private char next() {
        if (at == text.length()) throw unknown();
        return text.charAt(at++);
    }

    private boolean isNext(String what) {
        if (!text.startsWith(what, at)) return false;
        at += what.length();
        return true;
    }

    private Part ways() {
        Part one = row();
        if (!isNext("|")) return one;
        Part other = ways();
        return new Part(
                step(Step.EITHER, one.steps().length() + 2)
                        + one.steps()
                        + step(Step.GO, other.steps().length())
                        + other.steps(),
                Math.min(one.least(), other.least()));
    }

    private Part row() {
        StringBuilder steps = new StringBuilder();
        int least = 0;
        while (at < text.length() && text.charAt(at) != '|' && text.charAt(at) != ')') {
            Part one = counted(one());
            steps.append(one.steps());
            least += one.least();
        }
        return new Part(steps.toString(), least);
    }

    private Part one() {
        char c = next();
        return switch (c) {
            case '(' -> group();
            case '[' -> among();
            case '.' -> set(Step.BESIDE, LINE_ENDS);
            case '$' -> new Part("" + Step.LAST, 0);
            case '\\' -> escaped();
            case '^', '*', '+', '?', '{' -> {
                at--;
                throw unknown();
            }
            default -> plain(c);
        };
    }

    private Part escaped() {
        if (isNext("b")) return new Part("" + Step.EDGE, 0);
        if (isNext("R")) {
            Part both = new Part(step(Step.IS, '\r') + step(Step.IS, '\n'), 2);
            Part single = set(Step.AMONG, BREAKS);
            return new Part(
                    step(Step.EITHER, both.steps().length() + 2)
                            + both.steps()
                            + step(Step.GO, single.steps().length())
                            + single.steps(),
                    1);
        }
        String named = named();
        return named.isEmpty() ? plain(literal()) : set(Step.AMONG, named);
    }

    /** A set that has a letter of its own; empty where no such letter stands here. */
    private String named() {
        return isNext("d") ? DIGITS : isNext("w") ? WORDS : isNext("s") ? SPACES : "";
    }

    /** Behind a backslash: whatever is no letter and no digit means itself. */
    private char literal() {
        char c = next();
        if (isWithin(WORDS, c) && c != '_') {
            at--;
            throw unknown();
        }
        return c;
    }

    private Part plain(char c) {
        if (Character.isSurrogate(c)) throw unknown();
        if (anyCase && isWithin("AZaz", c)) {
            char other = (char) (c ^ 0x20);
            return set(Step.AMONG, "" + c + c + other + other);
        }
        return new Part(step(Step.IS, c), 1);
    }

    private Part set(char step, String ranges) {
        sets.add(ranges);
        return new Part(step(step, sets.size() - 1), 1);
    }

    private Part among() {
        boolean beside = isNext("^");
        StringBuilder ranges = new StringBuilder();
        while (ranges.length() == 0 || !isNext("]")) ranges.append(range());
        if (anyCase) throw unknown();
        return set(beside ? Step.BESIDE : Step.AMONG, ranges.toString());
    }

    private String range() {
        char first = next();
        if (first == '\\') {
            String named = named();
            if (!named.isEmpty()) {
                if (text.startsWith("-", at) && !text.startsWith("-]", at)) throw unknown();
                return named;
            }
            first = literal();
        } else if (first == '[' || first == '&' || Character.isSurrogate(first)) throw unknown();
        if (!text.startsWith("-", at) || text.startsWith("-]", at)) return "" + first + first;
        at++;
        char last = next();
        if (last == '\\') last = literal();
        if (last == '[' || last < first) throw unknown();
        return "" + first + last;
    }

    private Part group() {
        if (isNext("?=")) return look(false, true);
        if (isNext("?!")) return look(false, false);
        if (isNext("?<=")) return look(true, true);
        if (isNext("?<!")) return look(true, false);
        if (isNext("?:")) return inside();
        if (isNext("?")) throw unknown();
        int group = ++groups;
        Part in = inside();
        return new Part(step(Step.MARK, 2 * group) + in.steps() + step(Step.MARK, 2 * group + 1), in.least());
    }

    private Part inside() {
        Part in = ways();
        if (!isNext(")")) throw unknown();
        return in;
    }

    /** Back it goes over single characters alone, so that how far is known. */
    private Part look(boolean back, boolean wanted) {
        int before = groups;
        Part in = inside();
        String steps = in.steps() + Step.SEEN;
        boolean singles = in.steps().length() == in.least() * SINGLE;
        if (groups > before || (back && !singles)) throw unknown();
        return new Part(
                "" + Step.LOOK + (char) (back ? in.least() : 0) + (char) (wanted ? 1 : 0) + (char) steps.length()
                        + steps,
                0);
    }

    private Part counted(Part one) {
        int least;
        char most;
        if (isNext("*")) {
            least = 0;
            most = Step.ANY_NUMBER;
        } else if (isNext("+")) {
            least = 1;
            most = Step.ANY_NUMBER;
        } else if (isNext("?")) {
            least = 0;
            most = 1;
        } else if (isNext("{")) {
            least = number();
            most = (char) least;
            if (isNext(",")) most = text.startsWith("}", at) ? Step.ANY_NUMBER : (char) number();
            if (!isNext("}") || most < least) throw unknown();
        } else return one;
        boolean few = isNext("?");
        if (text.startsWith("+", at)) throw unknown();
        boolean single = one.steps().length() == SINGLE && one.least() == 1;
        String steps = single
                ? "" + Step.REPEAT + (char) least + most + (char) (few ? 1 : 0) + one.steps()
                : repeated(one, least, most, few ? Step.LATER : Step.EITHER);
        return new Part(steps, one.least() * least);
    }

    private int number() {
        int number = 0;
        int from = at;
        while (at < text.length() && isWithin(DIGITS, text.charAt(at))) number = number * 10 + next() - '0';
        if (at == from || at > from + 3) throw unknown();
        return number;
    }

    private String repeated(Part one, int least, char most, char choice) {
        String again = "";
        int length = one.steps().length();
        if (most == Step.ANY_NUMBER) {
            // What may be nothing could be found again and again at one place.
            if (one.least() == 0) throw unknown();
            again = step(choice, length + 2) + one.steps() + step(Step.GO, -length - 4);
        } else {
            for (int i = least; i < most; i++) again = step(choice, length + again.length()) + one.steps() + again;
        }
        return one.steps().repeat(least) + again;
    }

    private static String step(char step, int of) {
        return "" + step + (char) of;
    }

    static boolean isWithin(String ranges, int c) {
        for (int i = 0; i < ranges.length(); i += 2)
            if (c >= ranges.charAt(i) && c <= ranges.charAt(i + 1)) return true;
        return false;
    }
}
