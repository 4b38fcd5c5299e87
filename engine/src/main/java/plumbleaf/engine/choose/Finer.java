package plumbleaf.engine.choose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import plumbleaf.engine.finding.Finding;

/**
 * What it costs to do better than a check asks: the cheapest build that passes and whose measure is this much less.
 *
 * @param limit what the measure is held to
 * @param measure what the build has
 */
public record Finer<B>(double limit, double measure, Candidate<B> candidate) {
    /** What may come within a limit: asked before anything is measured, since one answer serves many builds. Never no where it does. */
    public interface Reach<A, P> {
        /** Of one first part: which parts it may be put on. */
        Predicate<P> on(A one, double limit);
    }

    /** The same, its build said otherwise. */
    public <C> Finer<C> as(Function<B, C> said) {
        return new Finer<>(limit, measure, candidate.as(said));
    }

    /**
     * The cheapest for each limit, {@code from - step, from - 2 step ...}, as far as the lattice goes; a build may serve for several limits. What cannot come within a
     * limit is left out of the lattice before it is gone through in order of price. Check: FinerTest, against a list of all builds.
     *
     * @param parts all builds
     * @param build one of them from its two parts
     * @param reach what may come within a limit
     * @param from the measure of the build that was chosen
     * @param most limits at most
     */
    public static <A, P, B> List<Finer<B>> of(
            List<Parts<A, P>> parts,
            BiFunction<A, P, B> build,
            Function<B, List<Finding>> judge,
            Reach<A, P> reach,
            ToDoubleFunction<B> measure,
            double from,
            double step,
            int most) {
        List<Finer<B>> found = new ArrayList<>();
        List<Parts<A, P>> left = parts;
        while (found.size() < most && from - (found.size() + 1) * step > 0) {
            double limit = from - (found.size() + 1) * step;
            left = within(left, reach, limit);
            Optional<Candidate<B>> best = cheapest(left, build, judge, measure, limit);
            if (best.isEmpty()) return List.copyOf(found);
            double has = measure.applyAsDouble(best.get().build());
            while (found.size() < most
                    && from - (found.size() + 1) * step > 0
                    && has <= from - (found.size() + 1) * step)
                found.add(new Finer<>(from - (found.size() + 1) * step, has, best.get()));
        }
        return List.copyOf(found);
    }

    private static <A, P> List<Parts<A, P>> within(List<Parts<A, P>> parts, Reach<A, P> reach, double limit) {
        List<Parts<A, P>> left = new ArrayList<>();
        for (Parts<A, P> each : parts) {
            Predicate<P> may = reach.on(each.one().build(), limit);
            List<Candidate<P>> ons =
                    each.ons().stream().filter(on -> may.test(on.build())).toList();
            if (!ons.isEmpty()) left.add(new Parts<>(each.one(), ons));
        }
        return left;
    }

    private static <A, P, B> Optional<Candidate<B>> cheapest(
            List<Parts<A, P>> parts,
            BiFunction<A, P, B> build,
            Function<B, List<Finding>> judge,
            ToDoubleFunction<B> measure,
            double limit) {
        InOrderOfPrice<A, P, B> byPrice = new InOrderOfPrice<>(parts, build);
        while (byPrice.hasNext()) {
            Candidate<B> candidate = byPrice.next();
            if (!(measure.applyAsDouble(candidate.build()) <= limit)) continue;
            if (Cheapest.passes(judge.apply(candidate.build()))) return Optional.of(candidate);
        }
        return Optional.empty();
    }
}
