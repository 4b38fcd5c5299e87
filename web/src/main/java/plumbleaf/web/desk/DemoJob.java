package plumbleaf.web.desk;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import org.springframework.stereotype.Component;
import plumbleaf.web.room.Rooms;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobStore;

/** The job of the examples, for looking round. Its people and prices are invented. */
@Component
public class DemoJob {
    private static final String FILE = "/plumbleaf/web/examples/nursery-lane.json";

    private final JobStore store;

    DemoJob(JobStore store) {
        this.store = store;
    }

    /** Puts a fresh copy into the store. */
    public JobId put() {
        String text = text();
        return store.create(Rooms.titleOf(text), text, "the demo").id();
    }

    private static String text() {
        try (InputStream file = DemoJob.class.getResourceAsStream(FILE)) {
            if (file == null) throw new IllegalStateException("The demo job is not in the jar: " + FILE);
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
