package plumbleaf.web.people;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Locale;
import java.util.Optional;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.web.store.Database;

/**
 * Eight letters printed where the server was started. Whoever makes the first owner types them, so that the first stranger to find the
 * address does not become the owner. Several nodes print the same ones; after that they are good for nothing.
 */
@Component
public final class SetupCode {
    private static final String LETTERS = "ABCDEFGHJKMNPQRSTUVWXYZ23456789";
    private static final int SIZE = 8;

    private final JdbcClient sql;

    SetupCode(Database database) {
        this.sql = database.sql();
    }

    public String text() {
        Optional<String> known = known();
        if (known.isPresent()) return known.get();
        try {
            sql.sql("insert into setting (name, value) values ('setup-code', ?)")
                    .param(fresh())
                    .update();
        } catch (DataAccessException anotherNodeWasFirst) {
            return known().orElseThrow(() -> anotherNodeWasFirst);
        }
        return known().orElseThrow();
    }

    public boolean is(String typed) {
        byte[] mine = text().getBytes(StandardCharsets.UTF_8);
        byte[] theirs = typed.strip().toUpperCase(Locale.ROOT).getBytes(StandardCharsets.UTF_8);
        return MessageDigest.isEqual(mine, theirs);
    }

    private Optional<String> known() {
        return sql.sql("select value from setting where name = 'setup-code'")
                .query(String.class)
                .optional();
    }

    private static String fresh() {
        SecureRandom random = new SecureRandom();
        StringBuilder letters = new StringBuilder(SIZE);
        for (int i = 0; i < SIZE; i++) letters.append(LETTERS.charAt(random.nextInt(LETTERS.length())));
        return letters.toString();
    }
}
