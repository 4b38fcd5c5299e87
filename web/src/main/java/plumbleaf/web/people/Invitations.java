package plumbleaf.web.people;

import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.web.store.Database;

/** Links with which somebody sets their own password: used once, good for a week, and the newest only. */
@Component
public class Invitations {
    private static final Duration GOOD_FOR = Duration.ofDays(7);

    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;
    private final People people;
    private final Audit audit;

    public Invitations(Database database, Clock clock, People people, Audit audit) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
        this.people = people;
        this.audit = audit;
    }

    /** Makes a link for someone; earlier ones no longer work. */
    public Secret invite(Person who, String by) {
        Secret secret = Secret.fresh();
        database.doTogether(() -> {
            sql.sql("delete from invitation where person = ?").param(who.id()).update();
            sql.sql("insert into invitation (token, person, expires_at) values (?, ?, ?)")
                    .params(secret.hash(), who.id(), clock.millis() + GOOD_FOR.toMillis())
                    .update();
            audit.note(by, "gave a link to set a password", who.signIn());
        });
        return secret;
    }

    /** Whom a link is for, while it is good. */
    public Optional<Person> invited(Secret secret) {
        return sql.sql("select p.sign_in from invitation i join person p on p.id = i.person"
                        + " where i.token = ? and i.used_at is null and i.expires_at > ? and p.closed_at is null")
                .params(secret.hash(), clock.millis())
                .query(String.class)
                .optional()
                .flatMap(people::find);
    }

    /** Uses the link up. False where it is not good, or was used a moment ago. */
    public boolean setPassword(Secret secret, String password) {
        return database.together(() -> {
            Optional<Person> who = invited(secret);
            if (who.isEmpty()) return false;
            int used = sql.sql("update invitation set used_at = ? where token = ? and used_at is null")
                    .params(clock.millis(), secret.hash())
                    .update();
            if (used == 0) return false;
            people.setPassword(who.get(), password);
            return true;
        });
    }
}
