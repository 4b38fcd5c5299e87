package plumbleaf.web.files;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Clock;
import java.time.Instant;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Component;
import plumbleaf.web.people.Secret;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;

/** Photos and files that lie with a job, a gate or a shot. They are in the store itself, so a backup has them. */
@Component
public class JobFiles {
    /** A phone's photo is 3 to 12 MB. */
    public static final int LARGEST_BYTES = 20 * 1024 * 1024;

    static final int MOST_FILES = 300;
    static final long MOST_BYTES_A_JOB = 1024L * 1024 * 1024;
    /** The part under which a file is for those who see money only. */
    public static final String OFFICE = "office";

    static final int LONGEST_NAME = 120;

    private final Database database;
    private final JdbcClient sql;
    private final Clock clock;

    public JobFiles(Database database, Clock clock) {
        this.database = database;
        this.sql = database.sql();
        this.clock = clock;
    }

    /** @param part {@code G1}, {@code S4}, {@code job} or {@code office} */
    public record Line(
            String id, String part, String name, FileKind kind, long size, String who, Instant at, boolean trashed) {}

    /** A file with all that is in it. */
    public static final class Whole {
        private final Line line;
        private final byte[] bytes;

        Whole(Line line, byte[] bytes) {
            this.line = line;
            this.bytes = bytes.clone();
        }

        public Line line() {
            return line;
        }

        public byte[] bytes() {
            return bytes.clone();
        }
    }

    /** Why a file was not taken in: half a sentence with the cure. */
    public static final class Refused extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Refused(String why) {
            super(why);
        }
    }

    /** Takes a file in. When this returns it is on disk. */
    public String add(JobId job, String part, String name, byte[] bytes, String who) {
        if (bytes.length > LARGEST_BYTES) throw new Refused("it is larger than 20 MB; make it smaller");
        FileKind kind = FileKind.of(bytes)
                .orElseThrow(
                        () -> new Refused(
                                "it is neither a photo (JPEG, PNG, WebP, HEIC) nor a PDF nor plain text; save it as one of these"));
        if (!part.matches("[A-Za-z0-9.]{1,16}")) throw new Refused("there is no such part of the job; pick one");
        String id = Secret.id();
        return database.together(() -> {
            // Two who add at once wait for each other here, so the limits hold.
            sql.sql("update job set version = version where id = ?")
                    .param(job.text())
                    .update();
            long files = one("select count(*) from attachment where job = ?", job);
            long size = one("select coalesce(sum(size), 0) from attachment where job = ?", job);
            if (files >= MOST_FILES) throw new Refused("this job has " + MOST_FILES + " files already");
            if (size + bytes.length > MOST_BYTES_A_JOB) throw new Refused("this job holds 1 GB of files already");
            sql.sql("insert into attachment (id, job, part, name, kind, size, digest, who, made_at, content)"
                            + " values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)")
                    .params(id, job.text(), part, tidy(name), kind.mediaType(), bytes.length)
                    .params(digest(bytes), who, clock.millis(), bytes)
                    .update();
            return id;
        });
    }

    public List<Line> of(JobId job) {
        return sql.sql("select id, part, name, kind, size, who, made_at, trashed_at from attachment where job = ?"
                        + " order by made_at desc, id")
                .param(job.text())
                .query((row, n) -> new Line(
                        row.getString("id"),
                        row.getString("part"),
                        row.getString("name"),
                        FileKind.ofMediaType(row.getString("kind")).orElse(FileKind.TEXT),
                        row.getLong("size"),
                        row.getString("who"),
                        Instant.ofEpochMilli(row.getLong("made_at")),
                        row.getObject("trashed_at") != null))
                .list();
    }

    public Optional<Whole> open(JobId job, String id) {
        return of(job).stream()
                .filter(line -> line.id().equals(id))
                .findFirst()
                .map(line -> new Whole(
                        line,
                        sql.sql("select content from attachment where id = ?")
                                .param(id)
                                .query((row, n) -> row.getBytes("content"))
                                .single()));
    }

    /** Lays a file in the trash, or takes it out again. */
    public void setTrashed(JobId job, String id, boolean trashed) {
        String set = trashed ? "trashed_at = coalesce(trashed_at, " + clock.millis() + ")" : "trashed_at = null";
        sql.sql("update attachment set " + set + " where job = ? and id = ?")
                .params(job.text(), id)
                .update();
    }

    private long one(String query, JobId job) {
        return sql.sql(query).param(job.text()).query(Long.class).single();
    }

    /** The last part of a path, without characters that steer a terminal or a file system. */
    static String tidy(String name) {
        String last = name.replace('\\', '/');
        last = last.substring(last.lastIndexOf('/') + 1);
        String plain = last.replaceAll("[\\p{Cntrl}\\p{Cf}\"<>:|?*]", "").strip();
        if (plain.length() > LONGEST_NAME) plain = plain.substring(plain.length() - LONGEST_NAME);
        return plain.isEmpty() || plain.matches("\\.+") ? "file" : plain;
    }

    static String digest(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
