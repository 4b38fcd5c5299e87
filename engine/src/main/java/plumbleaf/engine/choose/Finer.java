package plumbleaf.engine.choose;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import plumbleaf.engine.finding.Finding;

/**
 * What it costs to do better than a check asks: the cheapest build that passes and whose measure is this much less.
 *
 * @param limit what the measure is held to
 * @param measure what the build has
 */
public record Finer<B>(double limit, double measure, Candidate<B> candidate) {
    /** The same, its build said otherwise. */
    public <C> Finer<C> as(Function<B, C> said) {
        return new Finer<>(limit, measure, candidate.as(said));
    }

    /**
     * The cheapest for each limit, {@code from - step, from - 2 step ...}, as far as the lattice goes; a build may serve for several limits.
     *
     * @param byPrice all builds, the cheapest first
     * @param from the measure of the build that was chosen
     * @param most limits at most
     */
    public static <B> List<Finer<B>> of(
            Iterator<Candidate<B>> byPrice,
            Function<B, List<Finding>> judge,
            ToDoubleFunction<B> measure,
            double from,
            double step,
            int most) {
        List<Finer<B>> found = new ArrayList<>();
        while (byPrice.hasNext() && found.size() < most && from - (found.size() + 1) * step > 0) {
            Candidate<B> candidate = byPrice.next();
            double has = measure.applyAsDouble(candidate.build());
            if (!(has <= from - (found.size() + 1) * step)) continue;
            if (!Cheapest.passes(judge.apply(candidate.build()))) continue;
            while (found.size() < most
                    && from - (found.size() + 1) * step > 0
                    && has <= from - (found.size() + 1) * step)
                found.add(new Finer<>(from - (found.size() + 1) * step, has, candidate));
        }
        return List.copyOf(found);
    }
}
