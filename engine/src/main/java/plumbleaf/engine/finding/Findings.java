package plumbleaf.engine.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumbleaf.engine.quantity.Ties;

/** Findings in their one order: worst first, then ratio down, then id, then part. */
public final class Findings {
    private static final Comparator<Finding> WORST_FIRST = Comparator.comparing(Finding::severity)
            .thenComparing(Comparator.comparingDouble(Findings::ratio).reversed())
            .thenComparing(Finding::id)
            .thenComparing(Finding::part);

    private Findings() {}

    /** All the findings of several lists, in order. */
    @SafeVarargs
    public static List<Finding> join(List<? extends Finding>... lists) {
        List<Finding> all = new ArrayList<>();
        for (List<? extends Finding> list : lists) all.addAll(list);
        all.sort(WORST_FIRST);
        return List.copyOf(all);
    }

    /** The worst severity among them; a job without findings passes. */
    public static Severity worst(List<? extends Finding> findings) {
        return findings.stream()
                .map(Finding::severity)
                .min(Comparator.naturalOrder())
                .orElse(Severity.PASS);
    }

    /** A finding without a ratio sorts above every ratio of its severity: nothing provided is worse than too little. */
    private static double ratio(Finding finding) {
        return finding.measure()
                .map(measure -> Ties.inOrder(measure.ratio().orElse(Double.MAX_VALUE)))
                .orElse(-1.0);
    }
}
