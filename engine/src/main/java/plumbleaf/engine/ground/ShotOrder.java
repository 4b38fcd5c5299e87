package plumbleaf.engine.ground;

import java.util.Comparator;

/** Ids as people count them: letters first, then the number, so that S9 comes before S10. */
final class ShotOrder {
    static final Comparator<String> BY_ID = Comparator.comparing(ShotOrder::letters)
            .thenComparing(
                    ShotOrder::digits, Comparator.comparingInt(String::length).thenComparing(Comparator.naturalOrder()))
            .thenComparing(Comparator.naturalOrder());

    private ShotOrder() {}

    private static int firstDigit(String id) {
        int at = 0;
        while (at < id.length() && !isDigit(id.charAt(at))) at++;
        return at;
    }

    private static String letters(String id) {
        return id.substring(0, firstDigit(id));
    }

    /** The first number in the id, without leading zeros. */
    private static String digits(String id) {
        int from = firstDigit(id);
        int to = from;
        while (to < id.length() && isDigit(id.charAt(to))) to++;
        while (from < to - 1 && id.charAt(from) == '0') from++;
        return id.substring(from, to);
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }
}
