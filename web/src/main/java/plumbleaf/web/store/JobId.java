package plumbleaf.web.store;

import java.security.SecureRandom;

/** Names a job in addresses: sixteen letters and digits nobody can guess. */
public record JobId(String text) {
    private static final String LETTERS = "abcdefghjkmnpqrstuvwxyz23456789";
    private static final int SIZE = 16;

    public JobId {
        if (!isOne(text)) throw new IllegalArgumentException("Not a job's id: " + text);
    }

    public static boolean isOne(String text) {
        return text.matches("[a-z0-9]{1,32}");
    }

    static JobId random(SecureRandom random) {
        StringBuilder text = new StringBuilder(SIZE);
        for (int i = 0; i < SIZE; i++) text.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        return new JobId(text.toString());
    }

    @Override
    public String toString() {
        return text;
    }
}
