package plumbleaf.cli;

import java.nio.file.Path;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.Standards;
import plumbleaf.engine.design.Verdict;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** A job file read and designed with the catalogue, tables and price book that come with the program. */
final class Designed {
    private final Design design;

    private Designed(Design design) {
        this.design = design;
    }

    static Designed from(Path file) {
        JobReading.Good reading = JobDoor.job(file);
        Job job = reading.is();
        PriceBook book = PriceBooks.of(job);
        Design design = Designs.of(job, JobDoor.catalogue(), standards(), book, new ProvenCutPlanner());
        return new Designed(design.with(reading.gaps()));
    }

    static Standards standards() {
        StandardTables tables = StandardTables.load();
        return tables.standards();
    }

    Design design() {
        return design;
    }

    /** One line where something must be fixed, so that nobody takes a price or a cut list for a finished one. */
    void warn(Answer answer) {
        if (design.verdict() == Verdict.FAILS)
            answer.say("Something must be fixed first: " + FindingText.count(design.findings())
                    + "; see plumbleaf design.");
    }

    int exitCode() {
        return design.verdict() == Verdict.FAILS ? ExitCode.MUST_FIX : ExitCode.FINE;
    }
}
