package plumbleaf.web.proof;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import org.slf4j.LoggerFactory;
import plumbleaf.web.files.JobFiles;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** Saves without end, from several threads, and says what it was told is saved: {@code job version} or {@code job file id}. */
final class Saver {
    private static final int THREADS = 3;
    private static final int EVERY = 10;

    private Saver() {}

    public static void main(String[] words) {
        ((ch.qos.logback.classic.Logger) LoggerFactory.getLogger("ROOT")).setLevel(ch.qos.logback.classic.Level.OFF);
        Database database = Database.open(words[0]);
        FileOutputStream out = new FileOutputStream(FileDescriptor.out);
        for (int i = 0; i < THREADS; i++) new Thread(() -> save(database, out)).start();
    }

    private static void save(Database database, FileOutputStream out) {
        JobStore store = new JobStore(database, Clock.systemUTC());
        JobFiles files = new JobFiles(database, Clock.systemUTC());
        StoredJob job = store.create("Yard", text(1), "Wen");
        say(out, job.id() + " 1");
        for (long version = 1; ; version++) {
            store.edit(job.id(), version, "Yard", text(version + 1), "edit " + version, "Wen");
            say(out, job.id() + " " + (version + 1));
            if (version % EVERY == 0) {
                byte[] bytes = text(version).getBytes(StandardCharsets.UTF_8);
                say(out, job.id() + " file " + files.add(job.id(), "job", version + ".txt", bytes, "Wen"));
            }
        }
    }

    static String text(long version) {
        return "{\"version\": " + version + ", \"filler\": \"" + "x".repeat((int) (version * 37 % 5000)) + "\"}";
    }

    /** Straight to the pipe in one write, so that a line that is read was whole, and was said after the save. */
    private static void say(FileOutputStream out, String line) {
        try {
            out.write((line + "\n").getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
