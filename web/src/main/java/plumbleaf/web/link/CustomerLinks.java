package plumbleaf.web.link;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.springframework.dao.DataAccessException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.web.people.Audit;
import plumbleaf.web.people.Secret;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.StoredJob;

/**
 * What a customer is shown: the chosen papers of one revision of one job, for a time, until it is taken back. The link carries a secret;
 * the store holds its hash. Who has it may accept, once.
 */
@Component
public class CustomerLinks {
    static final int LONGEST_DAYS = 365;

    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;
    private final Audit audit;

    public CustomerLinks(Database database, Clock clock, Audit audit) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
        this.audit = audit;
    }

    /**
     * @param revision of the job that is shown
     * @param papers   file names
     * @param acceptedBy the name they wrote; empty before
     * @param saidOn     the date they wrote; empty before
     * @param ticked     what they ticked, in words; may be empty
     */
    public record Line(
            String id,
            JobId job,
            long revision,
            List<String> papers,
            String who,
            Instant madeAt,
            Instant expiresAt,
            boolean revoked,
            String acceptedBy,
            String saidOn,
            String ticked) {
        public Line {
            papers = List.copyOf(papers);
        }

        public boolean isAccepted() {
            return !acceptedBy.isEmpty();
        }
    }

    /** Makes a link to the job as it stands now. Its text is shown once. */
    public Secret make(StoredJob job, List<String> papers, int days, String who) {
        Secret secret = Secret.fresh();
        long now = clock.millis();
        long until =
                now + Duration.ofDays(Math.max(1, Math.min(LONGEST_DAYS, days))).toMillis();
        database.doTogether(() -> {
            sql.sql("insert into customer_link (id, token, job, revision, papers, who, made_at, expires_at)"
                            + " values (?, ?, ?, ?, ?, ?, ?, ?)")
                    .params(Secret.id(), secret.hash(), job.id().text(), job.revision())
                    .params(String.join("/", papers), who, now, until)
                    .update();
            audit.note(who, "made a customer link", job.title());
        });
        return secret;
    }

    public List<Line> of(JobId job) {
        return lines("l.job = ? order by l.made_at desc, l.id", job.text());
    }

    /** What a link shows, while it is good. */
    public Optional<Line> open(Secret secret) {
        return lines(
                        "l.token = ? and l.revoked_at is null and l.expires_at > ? and exists"
                                + " (select 1 from job j where j.id = l.job and j.trashed_at is null)",
                        secret.hash(),
                        clock.millis())
                .stream()
                .findFirst();
    }

    public void revoke(JobId job, String id, String who) {
        database.doTogether(() -> {
            int ended = sql.sql(
                            "update customer_link set revoked_at = ? where job = ? and id = ? and revoked_at is null")
                    .params(clock.millis(), job.text(), id)
                    .update();
            if (ended == 1) audit.note(who, "took back a customer link", job.text());
        });
    }

    /** Writes down that the customer accepted. False where the link is no longer good or somebody accepted before. */
    public boolean accept(Secret secret, String name, LocalDate saidOn, String ticked) {
        try {
            return database.together(() -> {
                Optional<Line> link = open(secret);
                if (link.isEmpty() || link.get().isAccepted()) return false;
                sql.sql("insert into acceptance (link, name, said_on, made_at, ticked) values (?, ?, ?, ?, ?)")
                        .params(link.get().id(), name.strip(), saidOn.toString(), clock.millis(), ticked)
                        .update();
                audit.note(
                        name.strip(),
                        "accepted as a customer",
                        link.get().job().text() + ", revision " + link.get().revision());
                return true;
            });
        } catch (DataAccessException twoAtOnce) {
            if (open(secret).map(Line::isAccepted).orElse(false)) return false;
            throw twoAtOnce;
        }
    }

    private List<Line> lines(String where, Object... values) {
        return sql.sql("select l.id, l.job, l.revision, l.papers, l.who, l.made_at, l.expires_at, l.revoked_at,"
                        + " a.name, a.said_on, a.ticked from customer_link l left join acceptance a on a.link = l.id where "
                        + where)
                .params(values)
                .query((row, n) -> new Line(
                        row.getString("id"),
                        new JobId(row.getString("job")),
                        row.getLong("revision"),
                        List.of(row.getString("papers").split("/", -1)),
                        row.getString("who"),
                        Instant.ofEpochMilli(row.getLong("made_at")),
                        Instant.ofEpochMilli(row.getLong("expires_at")),
                        row.getObject("revoked_at") != null,
                        row.getString("name") == null ? "" : row.getString("name"),
                        row.getString("said_on") == null ? "" : row.getString("said_on"),
                        row.getString("ticked") == null ? "" : row.getString("ticked")))
                .list();
    }
}
