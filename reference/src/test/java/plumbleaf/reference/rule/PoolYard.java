package plumbleaf.reference.rule;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** A level yard with one fence, one gate and a pool behind it, its build pinned. */
final class PoolYard {
    private static final Catalogue CATALOGUE = StandardCatalogue.load();

    private PoolYard() {}

    static String text() throws IOException {
        try (InputStream in = Objects.requireNonNull(PoolYard.class.getResourceAsStream("/reference/pool-yard.json"))) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    static List<Finding> findings(String text) {
        JobReading reading = JobFile.read("pool.json", text, CATALOGUE);
        Job job = reading.job().orElseThrow(() -> new IllegalArgumentException("Bad job: " + reading.errors()));
        return Designs.of(
                        job,
                        CATALOGUE,
                        StandardTables.load().standards(),
                        PriceBooks.of(job).orElseThrow(),
                        new ProvenCutPlanner())
                .findings();
    }
}
