package plumbleaf.web.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;

/**
 * A word that opens a door by itself: in a link or a program's key. Nobody can guess it (192 random bits), and the store holds only its
 * SHA-256, so whoever reads a backup cannot use it.
 *
 * @param text as it is handed over, once
 */
public record Secret(String text) {
    private static final SecureRandom RANDOM = new SecureRandom();
    private static final int BYTES = 24;
    private static final int LONGEST = 128;

    public static Secret fresh() {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        return new Secret(Base64.getUrlEncoder().withoutPadding().encodeToString(bytes));
    }

    /** A short id that is no secret but meets no other. */
    public static String id() {
        byte[] bytes = new byte[12];
        RANDOM.nextBytes(bytes);
        return HexFormat.of().formatHex(bytes);
    }

    /** What the store keeps. */
    public String hash() {
        String heard = text.length() > LONGEST ? "" : text;
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(heard.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }

    @Override
    public String toString() {
        return "a secret";
    }
}
