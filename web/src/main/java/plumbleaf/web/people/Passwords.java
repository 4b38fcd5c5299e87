package plumbleaf.web.people;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;

/** What a password must be. Long, and not one of those that everybody tries; no rules about signs and digits, which make them worse. */
public final class Passwords {
    static final int SHORTEST = 12;
    /** What bcrypt reads of a password. A longer one is refused, not cut. */
    static final int LONGEST_BYTES = 72;
    /** Fewer different characters than this is one key held down. */
    private static final int LEAST_DIFFERENT = 5;

    private Passwords() {}

    /** What is wrong with a password, or nothing. */
    public static Optional<String> complaint(String password, String signIn) {
        if (password.codePointCount(0, password.length()) < SHORTEST)
            return Optional.of("A password has at least " + SHORTEST + " characters; a few plain words do well.");
        if (password.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES)
            return Optional.of("A password has at most " + LONGEST_BYTES + " characters.");
        String plain = password.toLowerCase(Locale.ROOT);
        boolean poor = plain.chars().distinct().count() < LEAST_DIFFERENT
                || plain.contains("password")
                || plain.contains("plumbleaf")
                || "01234567890123456789".contains(plain)
                || "qwertyuiopasdfghjklzxcvbnm".contains(plain)
                || (signIn.strip().length() > 3 && plain.contains(signIn.strip().toLowerCase(Locale.ROOT)));
        return poor
                ? Optional.of("That is among the first that a stranger tries; take a few plain words.")
                : Optional.empty();
    }
}
