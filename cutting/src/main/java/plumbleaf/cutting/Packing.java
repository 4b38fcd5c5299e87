package plumbleaf.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Decides whether all pieces come out of a given set of bars. First filled in turn ({@link InTurn}); then straight down: round the fractions of the {@link Relaxation}, fix, solve again. Then by
 * search: the widest piece left lies in some bar with some pattern that has no room for another piece; each such pattern is tried, the likeliest first, unless
 * the bound in whole numbers shows that the bars left would not do.
 */
final class Packing {
    /** Residues remembered as hopeless. */
    private static final int REMEMBERED = 200_000;

    private static final int DIVES = 3;

    /** Patterns listed for the {@link PoolSearch}. */
    private static final int LISTED = 20_000;

    private final Cutting cutting;
    private final Effort effort;
    private final Relaxation relaxation;
    private final Set<List<Integer>> hopeless = new LinkedHashSet<>();
    private boolean unsettled;

    /**
     * @param cutting with the bars at hand as supply and room used as price, see {@link Cutting#withBars}
     * @param relaxation of any such cutting, so that patterns found for one set of bars serve the next
     */
    Packing(Cutting cutting, Relaxation relaxation, Effort effort) {
        this.cutting = cutting;
        this.effort = effort;
        this.relaxation = relaxation;
    }

    /** How a packing came out. */
    enum Verdict {
        FITS,
        CANNOT,
        UNSETTLED
    }

    /**
     * @param bars one pattern for each bar used; empty unless it fits
     * @param shown where fractions show that it cannot fit, the worths that show it
     */
    record Outcome(Verdict verdict, List<Column> bars, Bound shown) {
        Outcome {
            bars = List.copyOf(bars);
        }

        static Outcome of(Verdict verdict, List<Column> bars) {
            return new Outcome(verdict, bars, Bound.NONE);
        }
    }

    Outcome decide() {
        long room = roomLeft(cutting.supply);
        if (room < cutting.volume()) return Outcome.of(Verdict.CANNOT, List.of());
        Relaxation.Solved first = relaxation.solve(cutting.demand, cutting.supply, room + 1);
        if (tooMuch(first, cutting.supply)) return new Outcome(Verdict.CANNOT, List.of(), first.bound());
        List<Column> inTurn = InTurn.fill(cutting, effort);
        if (!inTurn.isEmpty()) return Outcome.of(Verdict.FITS, inTurn);
        for (int number = 0; number < DIVES && !effort.spent(); number++) {
            List<Column> dived = new Dive(cutting, relaxation, effort).down(number, room);
            if (!dived.isEmpty()) return Outcome.of(Verdict.FITS, dived);
        }
        if (first.complete() && !first.bound().isNone()) {
            PatternPool patterns = PatternPool.of(cutting, first.bound(), relaxation.pricing(), room, LISTED, effort);
            if (!patterns.cutShort()) {
                PoolSearch search = new PoolSearch(cutting, patterns.columns(), effort);
                PoolSearch.Verdict verdict = search.search(room, room);
                if (verdict == PoolSearch.Verdict.FOUND) return Outcome.of(Verdict.FITS, search.best());
                return Outcome.of(verdict == PoolSearch.Verdict.NONE ? Verdict.CANNOT : Verdict.UNSETTLED, List.of());
            }
        }
        List<Column> bars = new ArrayList<>();
        if (search(cutting.demand.clone(), cutting.supply.clone(), bars)) return Outcome.of(Verdict.FITS, bars);
        return Outcome.of(unsettled ? Verdict.UNSETTLED : Verdict.CANNOT, List.of());
    }

    private boolean tooMuch(Relaxation.Solved solved, int[] supply) {
        long room = roomLeft(supply);
        Bound bound = solved.bound();
        return !bound.isNone() && bound.scaled > room * bound.scale;
    }

    private long roomLeft(int[] supply) {
        long room = 0;
        for (int k = 0; k < supply.length; k++) room += cutting.room[k] * supply[k];
        return room;
    }

    private boolean search(int[] demand, int[] supply, List<Column> bars) {
        int widest = widest(demand);
        if (widest < 0) return true;
        if (effort.spent()) {
            unsettled = true;
            return false;
        }
        List<Integer> residue = residue(demand, supply);
        if (hopeless.contains(residue)) return false;
        Relaxation.Solved solved = relaxation.solve(demand, supply, roomLeft(supply));
        if (!tooMuch(solved, supply)) {
            for (Column pattern : branches(demand, supply, widest, solved)) {
                int[] nextDemand = demand.clone();
                int[] nextSupply = supply.clone();
                pattern.takeFrom(nextDemand);
                nextSupply[pattern.kind]--;
                bars.add(pattern);
                if (search(nextDemand, nextSupply, bars)) return true;
                bars.remove(bars.size() - 1);
                if (effort.spent()) {
                    unsettled = true;
                    return false;
                }
            }
        }
        if (hopeless.size() < REMEMBERED) hopeless.add(residue);
        return false;
    }

    private static List<Integer> residue(int[] demand, int[] supply) {
        List<Integer> key = new ArrayList<>(demand.length + supply.length);
        for (int each : demand) key.add(each);
        for (int each : supply) key.add(each);
        return List.copyOf(key);
    }

    private static int widest(int[] demand) {
        for (int i = 0; i < demand.length; i++) {
            if (demand[i] > 0) return i;
        }
        return -1;
    }

    /** Patterns with the widest piece left: those the fractions use, most used first, then all others that the bound leaves open. */
    private List<Column> branches(int[] demand, int[] supply, int widest, Relaxation.Solved solved) {
        Set<Column> ordered = new LinkedHashSet<>();
        List<Relaxation.Share> used = new ArrayList<>(solved.shares());
        used.sort(Comparator.comparingDouble(share -> -share.times()));
        for (Relaxation.Share share : used) {
            Column pattern = share.column();
            if (pattern.count(widest) > 0 && pattern.within(demand, supply)) ordered.add(pattern);
        }
        for (int k = 0; k < supply.length; k++) {
            if (supply[k] <= 0 || cutting.room[k] < cutting.size[widest]) continue;
            FullPatterns full = new FullPatterns(
                    cutting, demand, k, widest, leastWorth(solved.bound(), supply, k), solved.bound(), effort);
            ordered.addAll(full.list());
            unsettled |= full.cutShort();
        }
        return new ArrayList<>(ordered);
    }

    /** What a pattern of this kind must at least be worth, or the rest would not fit in the bars left. */
    private long leastWorth(Bound bound, int[] supply, int kind) {
        if (bound.isNone()) return Long.MIN_VALUE;
        long price = cutting.price[kind] * bound.scale;
        return bound.scaled + price - bound.over[kind] - roomLeft(supply) * bound.scale;
    }
}
