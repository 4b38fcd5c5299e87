package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
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

/** Posts along 400 ft with six stretches where none may stand. Beside what it measures, which nobody else may call. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 4, time = 2)
public class PostSearchBenchmark {
    private static final double LEG_IN = 4800;
    private static final double MOST_IN = 96;
    private static final int STRETCHES = 6;
    private static final double LONGEST_STRETCH_IN = 60;

    private final List<ClosedStretch> closed = closed(new Random(5));

    private static List<ClosedStretch> closed(Random random) {
        List<ClosedStretch> stretches = new ArrayList<>();
        double eachIn = LEG_IN / STRETCHES;
        for (int i = 0; i < STRETCHES; i++) {
            double from = i * eachIn + random.nextDouble() * (eachIn - LONGEST_STRETCH_IN);
            stretches.add(new ClosedStretch(from, from + random.nextDouble() * LONGEST_STRETCH_IN, "roots"));
        }
        return List.copyOf(stretches);
    }

    @Benchmark
    public Object postSearch() {
        return new PostSearch(0, LEG_IN, closed, new KnownReach(from -> from + MOST_IN)).solve();
    }
}
