package plumbleaf.web.people;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.web.store.Database;

/** Keys for programs: each belongs to a person, may what they may, and ends when it is revoked or they are shut out. */
@Component
public class ApiTokens {
    private static final String MARK = "plf_";

    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;
    private final People people;
    private final Audit audit;

    public ApiTokens(Database database, Clock clock, People people, Audit audit) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
        this.people = people;
        this.audit = audit;
    }

    public record Line(String id, String label, Instant madeAt) {}

    /** Makes a key. Its text is shown once; the store keeps the hash. */
    public Secret make(Person who, String label) {
        Secret secret = new Secret(MARK + Secret.fresh().text());
        database.doTogether(() -> {
            sql.sql("insert into api_token (id, token, person, label, made_at) values (?, ?, ?, ?, ?)")
                    .params(Secret.id(), secret.hash(), who.id(), label.strip(), clock.millis())
                    .update();
            audit.note(who.name(), "made a key for a program", label.strip());
        });
        return secret;
    }

    public List<Line> of(Person who) {
        return sql.sql(
                        "select id, label, made_at from api_token where person = ? and revoked_at is null order by made_at, id")
                .param(who.id())
                .query((row, n) -> new Line(
                        row.getString("id"), row.getString("label"), Instant.ofEpochMilli(row.getLong("made_at"))))
                .list();
    }

    /** One's own key only. */
    public void revoke(Person who, String id) {
        database.doTogether(() -> {
            int ended = sql.sql(
                            "update api_token set revoked_at = ? where id = ? and person = ? and revoked_at is null")
                    .params(clock.millis(), id, who.id())
                    .update();
            if (ended == 1) audit.note(who.name(), "revoked a key for a program", id);
        });
    }

    /** Whose key this is. */
    Optional<Person> person(Secret secret) {
        return sql.sql("select p.sign_in from api_token t join person p on p.id = t.person"
                        + " where t.token = ? and t.revoked_at is null")
                .param(secret.hash())
                .query(String.class)
                .optional()
                .flatMap(people::find);
    }
}
