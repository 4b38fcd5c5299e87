package plumbleaf.web.people;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.springframework.stereotype.Component;
import plumbleaf.web.store.Database;

/** Who came in, who was let in, and what left the house. Lines are added and never changed, but for the
 * name of somebody who left ({@link People#takeOut}); no secret is ever in one. */
@Component
public class Audit {
    private final Database database;
    private final Clock clock;

    public Audit(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    /**
     * @param what  happened: {@code signed in}
     * @param about whom or what it was done to; may be empty
     */
    public record Line(Instant at, String who, String what, String about) {}

    public void note(String who, String what, String about) {
        database.sql()
                .sql("insert into audit (id, made_at, who, what, about) values (?, ?, ?, ?, ?)")
                .params(Secret.id(), clock.millis(), who, what, about)
                .update();
    }

    /** The latest lines, latest first. */
    public List<Line> latest(int most) {
        return database.sql()
                .sql("select made_at, who, what, about from audit order by made_at desc, id limit " + most)
                .query((row, n) -> new Line(
                        Instant.ofEpochMilli(row.getLong("made_at")),
                        row.getString("who"),
                        row.getString("what"),
                        row.getString("about")))
                .list();
    }
}
