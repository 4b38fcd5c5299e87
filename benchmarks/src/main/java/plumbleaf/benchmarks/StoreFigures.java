package plumbleaf.benchmarks;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import plumbleaf.web.store.Database;
import plumbleaf.web.store.JobId;
import plumbleaf.web.store.JobLine;
import plumbleaf.web.store.JobStore;
import plumbleaf.web.store.StoredJob;

/** The store alone, one SQLite file, every commit synced to the disk: many jobs listed and opened, and edits of one after the other. */
final class StoreFigures {
    private static final double LEAST_EDITS_A_SECOND = 500;
    private static final int LISTED = 15;
    private static final int OPENED = 500;
    private static final int EDITED = 2000;
    /** Words of invented job names. */
    private static final List<String> STREETS =
            List.of("Heron Walk", "Kiln Yard", "Sable Row", "Gannet Spit", "Nursery Lane", "Alder Court", "Mill Race");

    private StoreFigures() {}

    /** A file with so many jobs, each a copy of an example under a name of its own. */
    static Path filled(Path folder, int jobs) {
        Path file = folder.resolve("jobs-" + jobs + ".db");
        String document = document();
        try (Database database = Database.open(file.toString())) {
            JobStore store = new JobStore(database, Clock.systemUTC());
            for (int i = 0; i < jobs; i++) {
                String title = title(i);
                store.create(
                        title, document.replaceFirst("\"title\": *\"[^\"]*\"", "\"title\": \"" + title + "\""), "you");
            }
        }
        return file;
    }

    static String title(int i) {
        return STREETS.get(i % STREETS.size()) + " " + (i + 1);
    }

    static List<String> rows(Path file, int jobs) {
        List<String> rows = new ArrayList<>(List.of(Figure.heading()));
        try (Database database = Database.open(file.toString())) {
            JobStore store = new JobStore(database, Clock.systemUTC());
            List<Double> listed = new ArrayList<>();
            for (int i = 0; i < LISTED; i++) listed.add(millis(store::list));
            rows.add(Figure.of("list of " + jobs + " jobs", "ms", listed).row());
            Random random = new Random(7);
            List<JobId> ids = store.list().stream().map(JobLine::id).toList();
            List<Double> opened = new ArrayList<>();
            for (int i = 0; i < OPENED; i++) opened.add(millis(() -> store.open(ids.get(random.nextInt(ids.size())))));
            rows.add(Figure.of("one of " + jobs + " opened", "ms", opened).row());
            StoredJob job = store.open(ids.get(0)).orElseThrow();
            List<Double> edits = new ArrayList<>();
            long start = System.nanoTime();
            for (int i = 0; i < EDITED; i++) {
                long version = i + job.version();
                String document = job.document();
                edits.add(millis(() -> store.edit(job.id(), version, job.title(), document, "measured", "you")
                        .match(saved -> saved, stale -> {
                            throw new IllegalStateException("The edit was refused");
                        })));
            }
            double aSecond = EDITED / ((System.nanoTime() - start) / 1e9);
            rows.add(Figure.of("a durable edit", "ms", edits).row());
            rows.add("\nThat is " + Math.round(aSecond) + " durable edits a second, by one writer; the goal is "
                    + Math.round(LEAST_EDITS_A_SECOND) + (aSecond >= LEAST_EDITS_A_SECOND ? "." : ": **not met**."));
        }
        return rows;
    }

    private static double millis(Runnable work) {
        long start = System.nanoTime();
        work.run();
        return (System.nanoTime() - start) / 1e6;
    }

    private static String document() {
        try {
            return Files.readString(Path.of("examples", "kiln-yard.json"), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("Start it from the project's folder", e);
        }
    }
}
