package plumbleaf.benchmarks;

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
import plumbleaf.engine.bars.CutAnswer;

/** Cut plans, proven: a yard's, and three hundred pieces in twenty sizes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class CutBenchmark {
    private int turn;

    /** Another of ten lists each time, so that no one lucky list is timed. */
    @Benchmark
    public CutAnswer twentySizesThreeHundredPieces() {
        turn = (turn + 1) % CutSample.LISTS;
        return new ProvenCutPlanner().plan(CutSample.of(turn).task());
    }
}
