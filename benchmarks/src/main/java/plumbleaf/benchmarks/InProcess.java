package plumbleaf.benchmarks;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.util.Statistics;

/** What one warm process does, sampled by JMH in a process of its own. */
final class InProcess {
    /** Goals for the middle and for the slowest of a hundred, in milliseconds. */
    private static final Map<String, double[]> GOALS = new TreeMap<>(Map.of(
            "redesign", new double[] {5, 16},
            "choose", new double[] {100, Double.POSITIVE_INFINITY},
            "twentySizesThreeHundredPieces", new double[] {5, Double.POSITIVE_INFINITY},
            "packet", new double[] {500, Double.POSITIVE_INFINITY}));

    private InProcess() {}

    static List<String> rows(boolean brief) {
        OptionsBuilder options = new OptionsBuilder();
        options.include("plumbleaf\\..*Benchmark").forks(1);
        if (brief) {
            options.warmupIterations(1).warmupTime(TimeValue.seconds(1));
            options.measurementIterations(1).measurementTime(TimeValue.seconds(1));
        }
        Collection<RunResult> results;
        try {
            results = new Runner(options.build()).run();
        } catch (RunnerException e) {
            throw new IllegalStateException("The benchmarks did not run", e);
        }
        List<String> rows = new ArrayList<>();
        rows.add("| what | median | 99 of 100 within | samples | goal |\n| --- | ---: | ---: | ---: | --- |");
        for (RunResult result : results) rows.add(row(result));
        return rows;
    }

    private static String row(RunResult result) {
        String label = result.getPrimaryResult().getLabel();
        Statistics times = result.getPrimaryResult().getStatistics();
        double toMillis = result.getPrimaryResult().getScoreUnit().startsWith("us") ? 1e-3 : 1;
        double middle = times.getPercentile(50) * toMillis;
        double slow = times.getPercentile(99) * toMillis;
        String aim = "";
        if (GOALS.containsKey(label)) {
            double[] goal = GOALS.get(label);
            aim = "at most " + Figure.text(goal[0]) + " ms";
            if (Double.isFinite(goal[1])) aim += ", 99 of 100 within " + Figure.text(goal[1]) + " ms";
            if (middle > goal[0] || slow > goal[1]) aim += ", **not met**";
        }
        return "| " + words(label) + " | " + Figure.text(middle) + " ms | " + Figure.text(slow) + " ms | "
                + times.getN() + " | " + aim + " |";
    }

    /** {@code tenthOfAMile} as it is said. */
    private static String words(String label) {
        return label.replaceAll("([A-Z])", " $1").toLowerCase(java.util.Locale.ROOT);
    }
}
