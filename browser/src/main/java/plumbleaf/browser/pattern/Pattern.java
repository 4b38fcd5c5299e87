package plumbleaf.browser.pattern;

import java.util.ArrayList;
import java.util.List;

/** What stands for {@code java.util.regex.Pattern} in the page: the same answers for what {@link PatternReader} knows. */
public final class Pattern {
    public static final int CASE_INSENSITIVE = 2;

    private static final int ASCII = 128;

    final String steps;
    final String[] sets;
    final int groups;
    private final boolean[] begins = new boolean[ASCII];
    private boolean beginsAnyhow = false;

    private Pattern(PatternReader reader) {
        this.steps = reader.steps();
        this.sets = reader.sets().toArray(new String[0]);
        this.groups = reader.groups();
        begin(0);
    }

    public static Pattern compile(String text) {
        return compile(text, 0);
    }

    /**
     * @param flags nothing or {@link #CASE_INSENSITIVE}, which is of the letters A to Z alone
     * @throws IllegalArgumentException where anything in it is not known here
     */
    public static Pattern compile(String text, int flags) {
        if ((flags & ~CASE_INSENSITIVE) != 0)
            throw new IllegalArgumentException("Patterns in a page know no flag " + flags);
        return new Pattern(new PatternReader(text, flags != 0));
    }

    public static String quote(String text) {
        StringBuilder quoted = new StringBuilder();
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean plain = c == ' ' || c >= ASCII || Character.isLetterOrDigit(c);
            quoted.append(plain ? "" : "\\").append(c);
        }
        return quoted.toString();
    }

    public static boolean matches(String pattern, CharSequence text) {
        return compile(pattern).matcher(text).matches();
    }

    public Matcher matcher(CharSequence text) {
        return new Matcher(this, text.toString());
    }

    public String[] split(CharSequence text) {
        return split(text, 0);
    }

    /** @param most how many parts at most; 0 for any number without the empty ones at the end, below zero for all */
    public String[] split(CharSequence text, int most) {
        String all = text.toString();
        List<String> parts = new ArrayList<>();
        Matcher found = matcher(all);
        int from = 0;
        while ((most <= 0 || parts.size() < most - 1) && found.find()) {
            if (found.end() == 0) continue;
            parts.add(all.substring(from, found.start()));
            from = found.end();
        }
        parts.add(all.substring(from));
        if (most == 0) while (parts.size() > 1 && parts.get(parts.size() - 1).isEmpty()) parts.remove(parts.size() - 1);
        return parts.toArray(new String[0]);
    }

    /** Whether a match may begin at such a character: most places of a text need no more than that question. */
    boolean mayBegin(char c) {
        return beginsAnyhow || c >= ASCII || begins[c];
    }

    private void begin(int from) {
        int at = from;
        while (true) {
            char of = at + 1 < steps.length() ? steps.charAt(at + 1) : 0;
            switch (steps.charAt(at)) {
                case Step.IS, Step.AMONG, Step.BESIDE -> {
                    for (int c = 0; c < ASCII; c++) begins[c] |= isTaken(at, c);
                    return;
                }
                case Step.REPEAT -> {
                    begin(at + 4);
                    if (of > 0) return;
                    at += 6;
                }
                case Step.EITHER, Step.LATER -> {
                    begin(at + 2);
                    at += 2 + (short) of;
                }
                case Step.GO -> at += 2 + (short) of;
                case Step.MARK -> at += 2;
                case Step.LOOK -> at += 4 + steps.charAt(at + 3);
                case Step.EDGE -> at++;
                default -> {
                    beginsAnyhow = true;
                    return;
                }
            }
        }
    }

    /** Whether a step for one character takes this one. */
    boolean isTaken(int step, int c) {
        char of = steps.charAt(step + 1);
        char kind = steps.charAt(step);
        return kind == Step.IS ? c == of : PatternReader.isWithin(sets[of], c) == (kind == Step.AMONG);
    }
}
