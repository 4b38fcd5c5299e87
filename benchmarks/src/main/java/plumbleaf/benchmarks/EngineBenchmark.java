package plumbleaf.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.design.GateChoice;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.Redesigner;
import plumbleaf.engine.design.Standards;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Frames;
import plumbleaf.engine.gate.GateAsk;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Gates;
import plumbleaf.engine.gate.RunGround;
import plumbleaf.engine.ground.NearGround;
import plumbleaf.engine.ground.RunLine;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.line.PicketRow;
import plumbleaf.engine.line.RunLines;
import plumbleaf.engine.pricing.PriceBook;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.sag.LifeJudgement;
import plumbleaf.engine.sag.Sags;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.pricebook.PriceBooks;
import plumbleaf.jobfile.result.ResultFile;

/** The calculation, warm. Sampled, since an edit is felt at its slowest and not at its average. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
public class EngineBenchmark {
    private static final int EDITS = 200;

    private final Standards standards = StandardTables.load().standards();
    private final Job yard = Yards.example("kiln-yard.json");
    private final Job lane = Yards.example("nursery-lane-settled.json");
    private final Job open = Yards.openYard();
    private final Job tenth = Yards.perimeter(0.1);
    private final PriceBook book = PriceBooks.of(yard).orElseThrow();
    private final Design yardDesign = design(yard);
    private final List<Job> walk = new Edits(Path.of("examples", "kiln-yard.json"), 5).walk(EDITS);
    private final Redesigner redesigner = new Redesigner(Yards.CATALOGUE, standards, new ProvenCutPlanner());
    private int turn;
    private final FrameSample leaf = FrameSample.leafLike();
    private final HungGate hung = yardDesign.gates().get(0).hung().get(0).gate();
    private final GateAsk swung = swung(yardDesign);
    private final Boarding boards = Yards.CATALOGUE
            .style(yard.runs().get(0).style())
            .orElseThrow()
            .boarding()
            .orElseThrow();

    private Design design(Job job) {
        return Designs.of(job, Yards.CATALOGUE, standards, book, new ProvenCutPlanner());
    }

    /** The yard's gate as it stands in the design, to be drawn and swung once more over its ground. */
    private static GateAsk swung(Design design) {
        GateDesign gate = design.gates().get(0);
        Job job = design.job();
        RunLine line = RunLines.of(job).stream()
                .filter(one -> one.id().equals(gate.asked().run()))
                .findFirst()
                .orElseThrow();
        return new GateAsk(
                gate.asked(),
                gate.plan().opening(),
                gate.parts(),
                new RunGround(NearGround.of(design.ground(), line), Slope.ZERO),
                job.rules().gap(),
                Length.ZERO,
                Yards.CATALOGUE.hinges(),
                job.display());
    }

    /** Drop by cause and by time, in soft, likely and stiff ground. */
    @Benchmark
    public GateSag sag() {
        return Sags.of(hung, HungLoads.person(Force.pounds(200)), LifeJudgement.USUAL);
    }

    /** The leaf drawn and swung over its ground, with its least clearance, without the cures. */
    @Benchmark
    public GatePlan swing() {
        return Gates.judged(swung);
    }

    /** Boards across 100 ft: how many, how far apart, how wide the last. */
    @Benchmark
    public PicketRow pickets() {
        return PicketRow.across(Length.feet(100), boards.board(), boards.spacing());
    }

    /** A frame of a leaf's size: 60 unknowns and more, three cases. */
    @Benchmark
    public FrameSolution frame() {
        return Frames.solve(leaf.model(), leaf.cases());
    }

    /** One of two hundred edits of a yard with a gate, any value of its file: what it touches worked out again. */
    @Benchmark
    public Design redesign() {
        turn = (turn + 1) % walk.size();
        return redesigner.of(walk.get(turn), book);
    }

    /** The same yard, everything worked out anew. */
    @Benchmark
    public Design yard() {
        return design(yard);
    }

    @Benchmark
    public Design lane() {
        return design(lane);
    }

    /** 528 ft of fence with a gate. */
    @Benchmark
    public Design tenthOfAMile() {
        return design(tenth);
    }

    /** The cheapest build of a gate of which nothing is pinned, with the proof. */
    @Benchmark
    public GateChoice choose() {
        return Designs.choose(open, Yards.CATALOGUE, standards, book, "G1");
    }

    /** The result as the text a program reads. */
    @Benchmark
    public String result() {
        return ResultFile.write(yardDesign);
    }
}
