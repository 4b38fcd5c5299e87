package plumbleaf.web.store;

import java.io.Serial;
import java.sql.SQLException;
import org.jspecify.annotations.Nullable;

/** A store that was named cannot be opened; the message says why, for whoever named it. Nothing in it was changed. */
public final class CannotOpen extends RuntimeException {
    @Serial
    private static final long serialVersionUID = 1L;

    CannotOpen(String why, @Nullable Throwable cause) {
        super(why, cause);
    }

    /** In the database's own words, without a password that they may repeat. */
    static CannotOpen because(RuntimeException thrown) {
        if (thrown instanceof CannotOpen said) return said;
        Throwable deepest = thrown;
        for (Throwable cause = thrown; cause != null; cause = cause.getCause())
            if (!(deepest instanceof SQLException) || cause instanceof SQLException) deepest = cause;
        String words = String.valueOf(deepest.getMessage())
                .lines()
                .findFirst()
                .orElse("the database does not say why")
                .strip()
                .replaceAll("password=[^&\\s]*", "password=...");
        return new CannotOpen(words.endsWith(".") ? words.substring(0, words.length() - 1) : words, thrown);
    }
}
