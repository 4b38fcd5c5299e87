package plumbleaf.engine.job;

import java.util.List;

/**
 * The limits this job must keep.
 *
 * @param pools one where a pool is closed off and something is said of it
 * @param sights where drivers must see over the fence
 * @param accessible gates on accessible ways
 * @param nearHouse one where nothing may burn beside a building
 * @param propertyLines lot lines that the fence keeps off
 * @param keeps what runs are to keep in or out
 * @param guards where a fence stands beside a drop
 * @param overnight what must not get out, or in, while the fence is down
 */
public record Rules(
        List<HeightRule> heights,
        GapRule gap,
        List<PoolBarrier> pools,
        List<SightTriangle> sights,
        List<AccessibleWay> accessible,
        List<NearHouse> nearHouse,
        List<Overnight> overnight,
        List<PropertyLine> propertyLines,
        List<Keeping> keeps,
        List<Guarded> guards) {
    public Rules {
        heights = List.copyOf(heights);
        pools = List.copyOf(pools);
        sights = List.copyOf(sights);
        accessible = List.copyOf(accessible);
        nearHouse = List.copyOf(nearHouse);
        overnight = List.copyOf(overnight);
        propertyLines = List.copyOf(propertyLines);
        keeps = List.copyOf(keeps);
        guards = List.copyOf(guards);
    }

    /** The pool that is closed off where there is one, as far as anything is said of it. */
    public PoolBarrier pool() {
        return pools.isEmpty() ? PoolBarrier.unsaid() : pools.get(0);
    }

    /** The tightest limit of the gap under a run. */
    public GapRule gapUnder(String run) {
        GapRule tightest = gap;
        for (Keeping keeping : keeps)
            if (keeping.holds(run) && keeping.gap().compareTo(tightest.largest()) < 0)
                tightest = new GapRule(keeping.gap(), "keeps " + keeping.what().words());
        return tightest;
    }
}
