package plumbleaf.browser.pattern;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** What stands for {@code java.util.regex.Matcher} in the page: tries a pattern's steps, and at each choice the other way where the first leads to nothing. */
public final class Matcher {
    private static final int NOWHERE = -1;

    private final Pattern pattern;
    private final String steps;
    private final String text;

    /** Where each group begins and ends, the whole first. */
    private final int[] marks;

    private boolean whole = false;

    Matcher(Pattern pattern, String text) {
        this.pattern = pattern;
        this.steps = pattern.steps;
        this.text = text;
        this.marks = new int[2 * pattern.groups + 2];
        Arrays.fill(marks, NOWHERE);
    }

    /** Whether the whole text is such a one. */
    public boolean matches() {
        Arrays.fill(marks, NOWHERE);
        whole = true;
        boolean found = isAt(0);
        whole = false;
        return found;
    }

    /** Whether the text begins with such a one. */
    public boolean lookingAt() {
        Arrays.fill(marks, NOWHERE);
        return isAt(0);
    }

    /** The next one, behind that which was found before. */
    public boolean find() {
        int from = marks[1] < 0 ? 0 : marks[1] == marks[0] ? marks[1] + 1 : marks[1];
        Arrays.fill(marks, NOWHERE);
        for (int at = from; at <= text.length(); at++)
            if (at == text.length() || pattern.mayBegin(text.charAt(at))) if (isAt(at)) return true;
        // Nor is there one when asked again.
        marks[0] = marks[1] = text.length() + 1;
        return false;
    }

    private boolean isAt(int at) {
        int end = tried(0, at);
        if (end < 0) return false;
        marks[0] = at;
        marks[1] = end;
        return true;
    }

    public int start() {
        return found(0);
    }

    public int end() {
        return found(1);
    }

    private int found(int mark) {
        if (marks[mark] < 0 || marks[mark] > text.length()) throw new IllegalStateException("Nothing was found");
        return marks[mark];
    }

    public String group() {
        return text.substring(start(), end());
    }

    /** A group's text, counted from 1; null where the match went past it. */
    public @Nullable String group(int group) {
        start();
        return marks[2 * group] < 0 || marks[2 * group + 1] < 0
                ? null
                : text.substring(marks[2 * group], marks[2 * group + 1]);
    }

    public int groupCount() {
        return pattern.groups;
    }

    public String replaceAll(String by) {
        return replaced(by, false);
    }

    public String replaceFirst(String by) {
        return replaced(by, true);
    }

    private String replaced(String by, boolean first) {
        Arrays.fill(marks, NOWHERE);
        StringBuilder said = new StringBuilder();
        int from = 0;
        while (find()) {
            said.append(text, from, start());
            from = end();
            put(by, said);
            if (first) break;
        }
        return said.append(text, from, text.length()).toString();
    }

    /** {@code $1} is the first group, a backslash lets what follows mean itself. */
    private void put(String by, StringBuilder said) {
        for (int i = 0; i < by.length(); i++) {
            char c = by.charAt(i);
            if (c == '$') {
                int group = by.charAt(++i) - '0';
                if (group < 0 || group > pattern.groups || pattern.groups > 9)
                    throw new IllegalArgumentException("Patterns in a page know no such group in " + by);
                String in = group(group);
                if (in != null) said.append(in);
            } else said.append(c == '\\' ? by.charAt(++i) : c);
        }
    }

    /** Where the steps from one on end that begin at this place; below zero where they do not lie here. */
    private int tried(int from, int start) {
        int step = from;
        int at = start;
        while (true) {
            char of = step + 1 < steps.length() ? steps.charAt(step + 1) : 0;
            switch (steps.charAt(step)) {
                case Step.IS, Step.AMONG, Step.BESIDE -> {
                    at = behind(step, at);
                    if (at < 0) return NOWHERE;
                    step += 2;
                }
                case Step.REPEAT -> {
                    return repeated(step, at);
                }
                case Step.EITHER -> {
                    int end = tried(step + 2, at);
                    if (end >= 0) return end;
                    step += 2 + (short) of;
                }
                case Step.LATER -> {
                    int end = tried(step + 2 + (short) of, at);
                    if (end >= 0) return end;
                    step += 2;
                }
                case Step.GO -> step += 2 + (short) of;
                case Step.MARK -> {
                    int before = marks[of];
                    marks[of] = at;
                    int end = tried(step + 2, at);
                    if (end < 0) marks[of] = before;
                    return end;
                }
                case Step.LOOK -> {
                    boolean seen = at >= of && tried(step + 4, at - of) >= 0;
                    if (seen != (steps.charAt(step + 2) == 1)) return NOWHERE;
                    step += 4 + steps.charAt(step + 3);
                }
                case Step.LAST -> {
                    if (!isLast(at)) return NOWHERE;
                    step++;
                }
                case Step.EDGE -> {
                    if (isWord(at - 1) == isWord(at)) return NOWHERE;
                    step++;
                }
                case Step.SEEN -> {
                    return at;
                }
                default -> {
                    return whole && at < text.length() ? NOWHERE : at;
                }
            }
        }
    }

    private int repeated(int step, int start) {
        int least = steps.charAt(step + 1);
        int most = steps.charAt(step + 2) == Step.ANY_NUMBER ? Integer.MAX_VALUE : steps.charAt(step + 2);
        boolean few = steps.charAt(step + 3) == 1;
        int one = step + 4;
        int rest = step + 6;
        int at = start;
        for (int i = 0; i < least; i++) {
            at = behind(one, at);
            if (at < 0) return NOWHERE;
        }
        int fewest = at;
        for (int i = least; i < most; i++) {
            if (few) {
                int end = tried(rest, at);
                if (end >= 0) return end;
            }
            int next = behind(one, at);
            if (next < 0) {
                if (few) return NOWHERE;
                break;
            }
            at = next;
        }
        while (true) {
            int end = tried(rest, at);
            if (end >= 0 || few || at == fewest) return end;
            at -= at - fewest > 1 && Character.isSurrogatePair(text.charAt(at - 2), text.charAt(at - 1)) ? 2 : 1;
        }
    }

    /** The place behind one character, where the step takes it. */
    private int behind(int step, int at) {
        if (at >= text.length()) return NOWHERE;
        int c = text.codePointAt(at);
        return pattern.isTaken(step, c) ? at + Character.charCount(c) : NOWHERE;
    }

    private boolean isLast(int at) {
        int left = text.length() - at;
        if (left == 2) return text.startsWith("\r\n", at);
        if (left > 2) return false;
        if (left == 0) return true;
        char c = text.charAt(at);
        return c == '\n'
                ? at == 0 || text.charAt(at - 1) != '\r'
                : c == '\r' || c == '\u0085' || c == '\u2028' || c == '\u2029';
    }

    /** A letter, a digit, a low line, or an accent upon one of the first two. */
    private boolean isWord(int at) {
        if (at < 0 || at >= text.length()) return false;
        int under = at;
        while (under > 0 && Character.getType(text.charAt(under)) == Character.NON_SPACING_MARK) under--;
        char c = text.charAt(under);
        return (c == '_' && under == at) || Character.isLetterOrDigit(c);
    }
}
