package plumbleaf.web.people;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.HexFormat;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.security.core.userdetails.User;
import org.springframework.security.core.userdetails.UserDetails;
import org.springframework.security.core.userdetails.UserDetailsService;
import org.springframework.security.core.userdetails.UsernameNotFoundException;
import org.springframework.security.crypto.password.PasswordEncoder;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/** The people of a served workspace and their passwords, kept as bcrypt hashes. No password is built in. */
@Component
public class People implements UserDetailsService {
    static final int SHORTEST_PASSWORD = 12;
    /** What bcrypt reads of a password. A longer one is refused, not cut. */
    static final int LONGEST_PASSWORD_BYTES = 72;

    private static final int ID_BYTES = 16;

    private final JdbcClient sql;
    private final Clock clock;
    private final PasswordEncoder passwords;

    public People(JdbcClient sql, Clock clock, PasswordEncoder passwords) {
        this.sql = sql;
        this.clock = clock;
        this.passwords = passwords;
    }

    /** Whether the first owner still has to be made. */
    public boolean nobodyYet() {
        return sql.sql("select count(*) from person").query(Long.class).single() == 0;
    }

    /**
     * Makes the first owner.
     *
     * @return false where someone else was first
     */
    @Transactional
    public boolean makeFirstOwner(String signIn, String name, String password) {
        if (!nobodyYet()) return false;
        byte[] id = new byte[ID_BYTES];
        new SecureRandom().nextBytes(id);
        sql.sql("insert into person (id, sign_in, name, role, secret, made_at) values (?, ?, ?, ?, ?, ?)")
                .params(
                        HexFormat.of().formatHex(id),
                        plain(signIn),
                        name.strip(),
                        Role.OWNER.key(),
                        Objects.requireNonNull(passwords.encode(password)),
                        clock.millis())
                .update();
        return true;
    }

    /** What is wrong with a password, or nothing. */
    public static Optional<String> complaint(String password) {
        if (password.codePointCount(0, password.length()) < SHORTEST_PASSWORD)
            return Optional.of(
                    "A password has at least " + SHORTEST_PASSWORD + " characters; a few plain words do well.");
        if (password.getBytes(StandardCharsets.UTF_8).length > LONGEST_PASSWORD_BYTES)
            return Optional.of("A password has at most " + LONGEST_PASSWORD_BYTES + " characters.");
        return Optional.empty();
    }

    Optional<Person> find(String signIn) {
        return sql.sql("select sign_in, name, role from person where sign_in = ?")
                .param(plain(signIn))
                .query((row, n) ->
                        new Person(row.getString("sign_in"), row.getString("name"), Role.of(row.getString("role"))))
                .optional();
    }

    @Override
    public UserDetails loadUserByUsername(String signIn) {
        return sql.sql("select sign_in, role, secret from person where sign_in = ?")
                .param(plain(signIn))
                .query((row, n) -> User.withUsername(row.getString("sign_in"))
                        .password(row.getString("secret"))
                        .roles(Role.of(row.getString("role")).name())
                        .build())
                .optional()
                .orElseThrow(() -> new UsernameNotFoundException("Nobody signs in so"));
    }

    private static String plain(String signIn) {
        return signIn.strip().toLowerCase(Locale.ROOT);
    }
}
