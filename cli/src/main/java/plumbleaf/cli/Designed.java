package plumbleaf.cli;

import java.nio.file.Path;
import java.util.List;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.Offered;
import plumbleaf.engine.design.Standards;
import plumbleaf.engine.design.Verdict;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobReading;
import plumbleaf.jobfile.offer.FitPrices;
import plumbleaf.jobfile.offer.Offers;
import plumbleaf.jobfile.offer.SpacingPrices;
import plumbleaf.jobfile.offer.Together;

/** A job file read and designed with the catalogue, tables and price book that come with the program. */
final class Designed {
    private final Path file;
    private final Catalogue catalogue;
    private final Design design;
    private final PriceBook book;

    private Designed(Path file, Catalogue catalogue, Design design, PriceBook book) {
        this.file = file;
        this.catalogue = catalogue;
        this.design = design;
        this.book = book;
    }

    static Designed from(Path file) {
        return from(file, HouseStyles.NONE);
    }

    /** With the house's own styles beside those of the program. */
    static Designed from(Path file, HouseStyles styles) {
        return from(file, styles.catalogueOf(file), YardDoor.Counted.NONE);
    }

    /** With what lies in a yard used first. */
    static Designed from(Path file, YardDoor.Counted yard) {
        return from(file, JobDoor.catalogue(file), yard);
    }

    private static Designed from(Path file, Catalogue catalogue, YardDoor.Counted yard) {
        JobReading.Good reading = JobDoor.job(file, catalogue);
        Job job = reading.is();
        PriceBook book = Books.of(file, job)
                .with(yard.yard().asSeenBy(yard.taker(file, job.title())).onHand());
        Design design = Designs.of(job, catalogue, standards(), book, new ProvenCutPlanner());
        return new Designed(file, catalogue, design.with(reading.gaps()), book);
    }

    static Standards standards() {
        StandardTables tables = StandardTables.load();
        return tables.standards();
    }

    Path file() {
        return file;
    }

    Design design() {
        return design;
    }

    PriceBook book() {
        return book;
    }

    /** The same job from another book. */
    Designed pricedFrom(PriceBook other) {
        Design again = Designs.of(design.job(), catalogue, standards(), other, new ProvenCutPlanner());
        return new Designed(file, catalogue, again, other);
    }

    /** Its options, each designed like the job itself; an option that does not fit is an error of the file. */
    List<Offered> offered() {
        Standards standards = standards();
        Offers offers = Offers.of(
                file.toString(),
                design,
                catalogue,
                job -> Designs.of(job, catalogue, standards, book, new ProvenCutPlanner()));
        if (!offers.errors().isEmpty()) throw new BadInput(offers.errors());
        return offers.offered();
    }

    /** Those of these ids built together; an id that no option has is refused by name. */
    Together together(List<String> ids) {
        List<Offered> each = ids.isEmpty() ? List.of() : offered();
        for (String id : ids)
            if (each.stream().noneMatch(offered -> offered.option().id().equals(id)))
                throw BadInput.of(file.toString(), "no option has the id " + id, "name one of money.options");
        Standards standards = standards();
        return Together.of(
                design,
                new Offers(each, List.of()),
                ids,
                catalogue,
                job -> Designs.of(job, catalogue, standards, book, new ProvenCutPlanner()));
    }

    /** Each run priced with its posts nearer together. */
    SpacingPrices spacings() {
        Standards standards = standards();
        return SpacingPrices.of(
                design, catalogue, job -> Designs.of(job, catalogue, standards, book, new ProvenCutPlanner()));
    }

    /** Each run priced with every fit to the ground. */
    FitPrices fits() {
        Standards standards = standards();
        return FitPrices.of(
                design, catalogue, job -> Designs.of(job, catalogue, standards, book, new ProvenCutPlanner()));
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
