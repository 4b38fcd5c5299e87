package plumbleaf.web.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Locale;
import org.springframework.stereotype.Component;

/**
 * Eight letters printed where the server was started. Whoever makes the first owner types them, so that the first stranger to find the
 * address does not become the owner.
 */
@Component
public final class SetupCode {
    private static final String LETTERS = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";
    private static final int SIZE = 8;

    private final String text;

    SetupCode() {
        SecureRandom random = new SecureRandom();
        StringBuilder letters = new StringBuilder(SIZE);
        for (int i = 0; i < SIZE; i++) letters.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        text = letters.toString();
    }

    public String text() {
        return text;
    }

    public boolean is(String typed) {
        byte[] mine = text.getBytes(StandardCharsets.UTF_8);
        byte[] theirs = typed.strip().toUpperCase(Locale.ROOT).getBytes(StandardCharsets.UTF_8);
        return MessageDigest.isEqual(mine, theirs);
    }
}
