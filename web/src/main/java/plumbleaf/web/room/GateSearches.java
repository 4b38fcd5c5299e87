package plumbleaf.web.room;

import jakarta.annotation.PreDestroy;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.zip.GZIPOutputStream;
import org.springframework.stereotype.Component;
import plumbleaf.engine.choose.Rejected;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.job.Gate;
import plumbleaf.jobfile.table.SafeCsv;

/** The searches for a gate's build that somebody asked for: one at a time, behind the page, and none unasked. */
@Component
class GateSearches {
    private static final int KEPT = 8;

    private final Bench bench;
    private final Map<String, GateSearching> latest = new LinkedHashMap<>(KEPT, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<String, GateSearching> eldest) {
            boolean over = size() > KEPT;
            if (over) eldest.getValue().giveUp();
            return over;
        }
    };

    private final ExecutorService behind = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "gate searches");
        thread.setDaemon(true);
        return thread;
    });

    GateSearches(Bench bench) {
        this.bench = bench;
    }

    /** The search of a gate in the job as it stands, where somebody asked. */
    Optional<GateSearching> of(Opened opened, String gate) {
        synchronized (latest) {
            return Optional.ofNullable(latest.get(key(opened, gate)));
        }
    }

    /** Asks for one; what was asked of the same gate before is given up. */
    void ask(Opened opened, Gate gate, SearchHow how) {
        GateSearching searching = new GateSearching(how);
        synchronized (latest) {
            GateSearching before = latest.put(key(opened, gate.id()), searching);
            if (before != null) before.giveUp();
        }
        behind.execute(() -> run(opened, gate, searching));
    }

    void giveUp(Opened opened, String gate) {
        synchronized (latest) {
            GateSearching before = latest.remove(key(opened, gate));
            if (before != null) before.giveUp();
        }
    }

    private void run(Opened opened, Gate gate, GateSearching searching) {
        if (!searching.isRunning()) return;
        searching.begin();
        try {
            GateChoice choice = bench.search(opened, gate.id(), searching.how(), searching);
            searching.end(FoundBuilds.of(gate, choice), packed(choice));
        } catch (CancellationException givenUp) {
            searching.giveUp();
        } finally {
            if (searching.isRunning()) searching.fail();
        }
    }

    private static String key(Opened opened, String gate) {
        return opened.stored().id() + " " + gate + " " + opened.key();
    }

    /** Every cheaper build with what it fails, packed: it may be a hundred thousand lines. */
    private static byte[] packed(GateChoice choice) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(out)) {
            SafeCsv head = new SafeCsv().row("price", "build", "fails");
            zip.write(head.text().getBytes(StandardCharsets.UTF_8));
            for (Rejected each : choice.choice().rejected()) {
                String line = new SafeCsv()
                        .row(each.price().text(), each.id(), each.because().message())
                        .text();
                zip.write(line.getBytes(StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            throw new UncheckedIOException("Memory took no bytes", e);
        }
        return out.toByteArray();
    }

    @PreDestroy
    void stop() {
        synchronized (latest) {
            latest.values().forEach(GateSearching::giveUp);
        }
        behind.shutdownNow();
    }
}
