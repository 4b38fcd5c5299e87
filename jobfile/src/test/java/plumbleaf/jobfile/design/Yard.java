package plumbleaf.jobfile.design;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.bars.Cut;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutBar;
import plumbleaf.engine.bars.CutPlan;
import plumbleaf.engine.bars.CutTask;
import plumbleaf.engine.bars.StockBar;
import plumbleaf.engine.catalogue.Catalogue;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.money.Money;
import plumbleaf.engine.quantity.Force;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** An example job with some of its words changed, read as any job is and designed. Pieces are cut from a bar each: what a cut plan says is tested elsewhere. */
record Yard(String text) {
    private static final Catalogue CATALOGUE = StandardCatalogue.load();

    static Yard nursery() {
        return example("nursery-lane.json");
    }

    static Yard fallow() {
        return example("fallow-gate.json");
    }

    private static Yard example(String name) {
        try {
            return new Yard(Files.readString(Path.of("..", "examples", name)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * A fence of boards on sand.
     *
     * @param ground pairs of a station in feet and an elevation in inches
     * @param run what else is said of it, its legs among that
     */
    static Yard ofBoards(String basis, String wind, int[][] ground, String run, String builds) {
        List<String> shots = new ArrayList<>();
        for (int[] at : ground)
            shots.add("{ \"id\": \"S" + (shots.size() + 1) + "\", \"run\": \"R1\", \"station\": \"" + at[0]
                    + "'\", \"elevation\": \"" + at[1] + "\\\"\" }");
        return new Yard("""
                { "format": "plumbleaf-job", "version": 1, "title": "Gorse Bank", "date": "2027-04-19",
                  "site": { "basis": "BASIS", "wind": { WIND }, "frost": { "depth": "24\\"", "source": "by phone" },
                    "soil": { "kind": "sand", "state": "medium" } },
                  "ground": { "shots": [ SHOTS ] },
                  "runs": [ { "id": "R1", "style": "wood-side-by-side", RUN } ],
                  "builds": { "R1": { BUILDS } },
                  "money": { "priceBook": "example-2027" } }
                """.replace("BASIS", basis)
                .replace("WIND", wind)
                .replace("SHOTS", String.join(", ", shots))
                .replace("RUN", run)
                .replace("BUILDS", builds));
    }

    /** The same job with some words changed, which must be there. */
    Yard with(String old, String other) {
        if (!text.contains(old)) throw new IllegalArgumentException("The job does not say " + old);
        return new Yard(text.replace(old, other));
    }

    Job job() {
        return job(CATALOGUE);
    }

    private Job job(Catalogue catalogue) {
        return JobFile.read("job", text, catalogue).match(good -> good.is(), bad -> {
            throw new IllegalArgumentException(bad.all().toString());
        });
    }

    Design design() {
        return designOf(job());
    }

    /** Any job, designed in the same way. */
    Design designOf(Job job) {
        return design(job, CATALOGUE);
    }

    /** The same with every latch holding so little. */
    Design designLatchedBy(Force holds) {
        Catalogue weak = new Catalogue(
                CATALOGUE.sections(),
                CATALOGUE.species(),
                CATALOGUE.woodPosts(),
                CATALOGUE.styles(),
                CATALOGUE.screws(),
                CATALOGUE.fastenerFits(),
                CATALOGUE.hinges(),
                CATALOGUE.latches().stream().map(latch -> holding(latch, holds)).toList(),
                CATALOGUE.rods(),
                CATALOGUE.rollers(),
                CATALOGUE.bolts(),
                CATALOGUE.stock(),
                CATALOGUE.augers(),
                CATALOGUE.depthStep());
        return design(job(weak), weak);
    }

    private static LatchModel holding(LatchModel latch, Force holds) {
        return new LatchModel(
                latch.id(),
                latch.name(),
                latch.tolerance(),
                latch.bite(),
                latch.play(),
                holds,
                latch.least(),
                latch.greatest(),
                latch.selfLatching(),
                latch.weight(),
                latch.source());
    }

    private static Design design(Job job, Catalogue catalogue) {
        return Designs.of(
                job,
                catalogue,
                StandardTables.load().standards(),
                PriceBooks.of(job).orElseThrow(),
                Yard::onePieceABar);
    }

    static GateDesign gate(Design design) {
        return design.gate("G1").orElseThrow();
    }

    static List<Finding> findings(Design design, String id) {
        return design.findings().stream()
                .filter(finding -> finding.id().equals(id))
                .toList();
    }

    private static CutAnswer onePieceABar(CutTask task) {
        StockBar bar = task.bars().get(task.bars().size() - 1);
        List<CutBar> bars = task.pieces().stream()
                .map(piece -> new CutBar(
                        bar.id(),
                        bar.lengthNm(),
                        bar.price(),
                        false,
                        0,
                        List.of(new Cut(piece.id(), piece.group(), piece.longPointNm())),
                        bar.lengthNm() - piece.longPointNm(),
                        true))
                .toList();
        Money cost = Money.cents(bar.price().cents() * bars.size());
        return new CutAnswer.Planned(new CutPlan(task.stock(), task.saw(), bars, cost, Money.ZERO, false, 0));
    }
}
