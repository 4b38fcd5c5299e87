package plumbleaf.benchmarks;

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
import plumbleaf.documents.PaperFile;
import plumbleaf.documents.PaperOptions;
import plumbleaf.documents.Papers;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.job.Job;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.pricebook.PriceBooks;

/** All papers of a job, warm. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class PaperBenchmark {
    private final Job job = Yards.example("nursery-lane-settled.json");
    private final Design design = Designs.of(
            job,
            Yards.CATALOGUE,
            StandardTables.load().standards(),
            PriceBooks.of(job).orElseThrow(),
            new ProvenCutPlanner());

    @Benchmark
    public List<PaperFile> packet() {
        return Papers.of(job, design, PaperOptions.usual());
    }
}
