package plumbleaf.web.room;

import java.util.Optional;
import java.util.function.Function;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.PickedGate;
import plumbleaf.engine.design.Redesigner;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Builds;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateBuild;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.Length;
import plumbleaf.jobfile.job.JobReading;

/**
 * What a job would cost with another answer in it, its gates made as they are now: the search for a build, a second or many of them for each gate, is made
 * anew only where that build does not hold with the answer at any depth.
 */
final class TriedPrices {
    private final Design now;
    private final Redesigner designs;
    private final Function<String, JobReading> read;
    private final Function<Job, PriceBook> book;

    TriedPrices(Design now, Redesigner designs, Function<String, JobReading> read, Function<Job, PriceBook> book) {
        this.now = now;
        this.designs = designs;
        this.read = read;
        this.book = book;
    }

    /** With tax, the holes of the gates as deep as they then must be; nothing where the text does not read. */
    Optional<Money> total(DocumentText text) {
        return job(text).map(job -> {
            Design asNow = design(made(job, false));
            return priceOf(noneHolds(asNow) ? design(job) : asNow);
        });
    }

    /** The same with the holes as deep as they are now, whether that holds or not. */
    Optional<Money> totalAsDug(DocumentText text) {
        return job(text).map(job -> priceOf(design(made(job, true))));
    }

    private Optional<Job> job(DocumentText text) {
        JobReading reading = read.apply(text.text());
        return reading.errors().isEmpty() ? reading.job() : Optional.empty();
    }

    private Design design(Job job) {
        return designs.of(job, book.apply(job));
    }

    private static Money priceOf(Design design) {
        return design.quote().price().total();
    }

    private static boolean noneHolds(Design design) {
        return design.findings().stream()
                .anyMatch(found -> found.id().equals("gate.build") && found.severity() == Severity.MUST_FIX);
    }

    private Job made(Job job, boolean asDug) {
        Builds builds = job.builds();
        for (Gate gate : job.gates()) {
            GateBuild said = builds.of(gate);
            if (!said.isOpen()) continue;
            for (GateDesign design : now.gates())
                if (design.id().equals(gate.id())) builds = builds.with(made(said, design.build(), asDug));
        }
        return job.withBuilds(builds);
    }

    private static GateBuild made(GateBuild said, PickedGate pick, boolean asDug) {
        Stated<Length> depth = asDug ? Stated.of(said.depth().or(pick.hole().depth())) : said.depth();
        return new GateBuild(
                said.gate(),
                Stated.of(said.frame().or(pick.frame().id())),
                said.flat(),
                Stated.of(said.bracing().or(pick.bracing())),
                Stated.of(said.joint().or(pick.joint())),
                said.bracket(),
                Stated.of(said.hingePost().or(pick.hingePost().id())),
                Stated.of(said.latchPost().or(pick.latchPost().id())),
                Stated.of(said.hole().or(pick.hole().diameter())),
                depth,
                said.latchHole(),
                said.latchDepth(),
                said.rightLeaf());
    }
}
