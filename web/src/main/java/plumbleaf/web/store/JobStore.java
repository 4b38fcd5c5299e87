package plumbleaf.web.store;

import java.security.SecureRandom;
import java.sql.Types;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;

/**
 * The jobs. Every change is one transaction that first takes the job's next version, so of two people who edit the same version one is
 * told so; the text of a revision is written once and stays. What a method returns is on disk.
 */
@Component
public class JobStore {
    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    public JobStore(Database database, Clock clock) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
    }

    /** A new job with its first revision. */
    public StoredJob create(String title, String document, String who) {
        JobId id = JobId.random(random);
        long now = clock.millis();
        return database.together(() -> {
            sql.sql("insert into job (id, title, stage, version, revision, changed_at)"
                            + " values (?, ?, 'settle', 1, 1, ?)")
                    .params(id.text(), title, now)
                    .update();
            insertRevision(id, 1, 0, document, "started the job", who, now);
            insertMove(id, 1, 1, "new", Maker.of(who), now);
            return open(id).orElseThrow();
        });
    }

    /** The jobs that are not in the trash, latest change first. */
    public List<JobLine> list() {
        return lines("select id, title, version, changed_at from job where trashed_at is null"
                + " order by changed_at desc, id");
    }

    /** The jobs in the trash, thrown away last first; {@code changedAt} is when. */
    public List<JobLine> trash() {
        return lines("select id, title, version, trashed_at as changed_at from job where trashed_at is not null"
                + " order by trashed_at desc, id");
    }

    private List<JobLine> lines(String query) {
        return sql.sql(query)
                .query((row, n) -> new JobLine(
                        new JobId(row.getString("id")),
                        row.getString("title"),
                        row.getLong("version"),
                        Instant.ofEpochMilli(row.getLong("changed_at"))))
                .list();
    }

    /** A job as it stands; nothing where there is none or it is in the trash. */
    public Optional<StoredJob> open(JobId id) {
        return opened(id, " and j.trashed_at is null");
    }

    private Optional<StoredJob> opened(JobId id, String which) {
        return sql.sql("select j.title, j.version, j.revision, r.document, r.parent,"
                        + " (select count(*) from revision c where c.job = j.id and c.parent = j.revision) as children"
                        + " from job j join revision r on r.job = j.id and r.number = j.revision where j.id = ?"
                        + which)
                .param(id.text())
                .query((row, n) -> new StoredJob(
                        id,
                        row.getString("title"),
                        row.getLong("version"),
                        row.getLong("revision"),
                        row.getString("document"),
                        row.getLong("parent") > 0,
                        row.getLong("children") > 0))
                .optional();
    }

    public Saving edit(JobId id, long madeOn, String title, String document, String what, String who) {
        return edit(id, madeOn, title, document, what, Maker.of(who));
    }

    /**
     * Writes a new revision; where the same sending has come before, nothing is written and that is how the job stands.
     *
     * @param madeOn the version the person saw when they made the change
     * @param what   the change in a few words: {@code G1 opening 4' 6"}
     */
    public Saving edit(JobId id, long madeOn, String title, String document, String what, Maker maker) {
        return database.together(() -> edited(id, madeOn, title, document, what, maker));
    }

    private Saving edited(JobId id, long madeOn, String title, String document, String what, Maker maker) {
        long now = clock.millis();
        if (hasCome(id, maker) || !takeNextVersion(id, madeOn, now)) return stale(id, maker);
        long parent = currentRevision(id);
        long number = sql.sql("select max(number) from revision where job = ?")
                        .param(id.text())
                        .query(Long.class)
                        .single()
                + 1;
        insertRevision(id, number, parent, document, what, maker.name(), now);
        sql.sql("update job set revision = ?, title = ? where id = ?")
                .params(number, title, id.text())
                .update();
        insertMove(id, madeOn + 1, number, "edit", maker, now);
        return new Saving.Saved(open(id).orElseThrow());
    }

    /** Goes back to the revision that the present one was made from. At the first revision nothing moves. */
    public Saving undo(JobId id, long madeOn, Maker maker) {
        String parent = "select parent from revision where job = ? and number = ? and parent > 0";
        return database.together(() -> move(id, madeOn, "undo", parent, maker));
    }

    /** Goes forward to the latest revision made from the present one. Where there is none nothing moves. */
    public Saving redo(JobId id, long madeOn, Maker maker) {
        String latestChild = "select max(number) from revision where job = ? and parent = ?";
        return database.together(() -> move(id, madeOn, "redo", latestChild, maker));
    }

    /** Every change to a job, latest first. */
    public List<Step> history(JobId id) {
        return sql.sql("select m.version, m.revision, m.kind, r.what, m.who, m.made_at from move m"
                        + " join revision r on r.job = m.job and r.number = m.revision"
                        + " where m.job = ? order by m.version desc")
                .param(id.text())
                .query((row, n) -> new Step(
                        row.getLong("version"),
                        row.getLong("revision"),
                        row.getString("kind"),
                        row.getString("what"),
                        row.getString("who"),
                        Instant.ofEpochMilli(row.getLong("made_at"))))
                .list();
    }

    /** Lays a job in the trash, where it keeps everything. False where it is not on the desk. */
    public boolean throwAway(JobId id, String who) {
        return binned(id, "trash", "trashed_at = changed_at", "trashed_at is null", who);
    }

    /** Takes a job out of the trash, as it was. False where it is not in there. */
    public boolean takeBack(JobId id, String who) {
        return binned(id, "restore", "trashed_at = null", "trashed_at is not null", who);
    }

    /**
     * Takes a job that is in the trash out of the store for good: every revision, move, file, link, acceptance and count. False where it is
     * not in there. Backups made before keep what they hold.
     */
    public boolean removeForGood(JobId id) {
        return database.together(() -> {
            int locked = sql.sql("update job set version = version + 1 where id = ? and trashed_at is not null")
                    .param(id.text())
                    .update();
            if (locked == 0) return false;
            sql.sql("delete from acceptance where link in (select id from customer_link where job = ?)")
                    .param(id.text())
                    .update();
            sql.sql("delete from desk_card where job = ?").param(id.text()).update();
            List<String> leaning = new ArrayList<>();
            database.tables().columns().forEach((table, columns) -> {
                if (columns.contains("job")) leaning.add(0, table);
            });
            for (String table : leaning)
                sql.sql("delete from " + table + " where job = ?")
                        .param(id.text())
                        .update();
            sql.sql("delete from job where id = ?").param(id.text()).update();
            return true;
        });
    }

    private boolean binned(JobId id, String kind, String set, String where, String who) {
        long now = clock.millis();
        return database.together(() -> {
            int moved = sql.sql("update job set version = version + 1, changed_at = ? where id = ? and " + where)
                    .params(now, id.text())
                    .update();
            if (moved == 0) return false;
            sql.sql("update job set " + set + " where id = ?").param(id.text()).update();
            StoredJob job = opened(id, "").orElseThrow();
            insertMove(id, job.version(), job.revision(), kind, Maker.of(who), now);
            return true;
        });
    }

    /** The text of one revision, the present one or not. */
    public Optional<String> document(JobId id, long revision) {
        return sql.sql("select document from revision where job = ? and number = ?")
                .params(id.text(), revision)
                .query(String.class)
                .optional();
    }

    private Saving move(JobId id, long madeOn, String kind, String whereTo, Maker maker) {
        long now = clock.millis();
        if (hasCome(id, maker) || !takeNextVersion(id, madeOn, now)) return stale(id, maker);
        long from = currentRevision(id);
        long to = sql.sql(whereTo)
                .params(id.text(), from)
                .query(Long.class)
                .optional()
                .orElse(from);
        sql.sql("update job set revision = ? where id = ?")
                .params(to, id.text())
                .update();
        insertMove(id, madeOn + 1, to, kind, maker, now);
        return new Saving.Saved(open(id).orElseThrow());
    }

    /** The one line on which two writers meet: only one of them finds the version it saw. */
    private boolean takeNextVersion(JobId id, long madeOn, long now) {
        return sql.sql("update job set version = version + 1, changed_at = ?"
                                + " where id = ? and version = ? and trashed_at is null")
                        .params(now, id.text(), madeOn)
                        .update()
                == 1;
    }

    private long currentRevision(JobId id) {
        return sql.sql("select revision from job where id = ?")
                .param(id.text())
                .query(Long.class)
                .single();
    }

    /** Those of some sendings that have come, whatever became of the job since. */
    public List<String> come(JobId id, Collection<String> sendings) {
        if (sendings.isEmpty()) return List.of();
        return sql.sql("select sending from move where job = :job and sending in (:sendings)")
                .param("job", id.text())
                .param("sendings", sendings)
                .query(String.class)
                .list();
    }

    private boolean hasCome(JobId id, Maker maker) {
        return !maker.sending().isEmpty() && !come(id, List.of(maker.sending())).isEmpty();
    }

    /** What to tell someone whose version is no longer the present one: what came first, unless it was this very change. */
    public Saving stale(JobId id, Maker maker) {
        if (hasCome(id, maker)) {
            Optional<StoredJob> now = open(id);
            if (now.isPresent()) return new Saving.Saved(now.get());
        }
        StoredJob now = opened(id, "").orElseThrow(() -> new IllegalArgumentException("There is no job " + id));
        Step last = history(id).get(0);
        String what = last.kind().equals("edit") ? last.what() : last.kind() + ": " + last.what();
        return new Saving.Stale(now, what, last.who());
    }

    private void insertRevision(
            JobId id, long number, long parent, String document, String what, String who, long now) {
        sql.sql("insert into revision (job, number, parent, document, what, who, made_at)"
                        + " values (?, ?, ?, ?, ?, ?, ?)")
                .params(id.text(), number, parent, document, what, who, now)
                .update();
    }

    private void insertMove(JobId id, long version, long revision, String kind, Maker maker, long now) {
        sql.sql("insert into move (job, version, revision, kind, who, made_at, sending) values (?, ?, ?, ?, ?, ?, ?)")
                .param(1, id.text())
                .param(2, version)
                .param(3, revision)
                .param(4, kind)
                .param(5, maker.name())
                .param(6, now)
                .param(7, maker.sending().isEmpty() ? null : maker.sending(), Types.VARCHAR)
                .update();
    }
}
