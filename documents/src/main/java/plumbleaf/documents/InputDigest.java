package plumbleaf.documents;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** The fingerprint of a job file. Source: FIPS 180-4, by the platform. */
final class InputDigest {
    private InputDigest() {}

    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException absent) {
            throw new IllegalStateException("Every platform has SHA-256", absent);
        }
    }
}
