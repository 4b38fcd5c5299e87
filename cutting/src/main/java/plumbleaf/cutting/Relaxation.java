package plumbleaf.cutting;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plumbleaf.engine.simplex.Answer;
import plumbleaf.engine.simplex.GrowingProgram;
import plumbleaf.engine.simplex.Term;

/**
 * What fractions of patterns would cost: column generation, each column the best by an exact {@link Knapsack}. From the duals, cut down to whole numbers,
 * follows a bound in whole-number arithmetic that holds whatever the rounding of the linear program was.
 * Source: P. C. Gilmore and R. E. Gomory, Operations Research 9 (1961) 849-859 and 11 (1963) 863-888; the bound is the Lagrangian one for any
 * y >= 0: sum y_i d_i + sum over limited kinds of u_k min(0, c_k - V_k(y)). Check: ProvenCutPlannerTest.
 */
final class Relaxation {
    /** A piece left over costs this many of the dearest bars, far above what it could ever save. */
    private static final double LEFT_OVER = 1000;

    /** Worth of a column below which it is not added, against the dearest bar. */
    private static final double PAYS = 1e-7;

    private static final int PIVOTS = 100_000;

    private final Cutting cutting;
    private final Set<Pattern> pool;
    private final Effort effort;

    Relaxation(Cutting cutting, Set<Pattern> pool, Effort effort) {
        this.cutting = cutting;
        this.pool = pool;
        this.effort = effort;
    }

    /** A pattern and how often it is used. */
    record Share(Pattern pattern, double times) {}

    /**
     * @param cost of the fractions, in the unit of price
     * @param bound no whole plan costs less
     * @param complete no piece is left over and no column pays any more
     * @param worth duals as whole numbers, {@code scale} to the unit of price
     * @param best for each kind the most worth that fits in a bar of it
     * @param scaledBound the bound before rounding up, {@code scale} to the unit of price
     */
    record Solved(
            double cost,
            long bound,
            boolean complete,
            List<Share> shares,
            List<Long> worth,
            List<Long> best,
            long scale,
            long scaledBound) {
        Solved {
            shares = List.copyOf(shares);
            worth = List.copyOf(worth);
            best = List.copyOf(best);
        }
    }

    /** Solves for what is left to cut and the bars left, stopping as soon as the bound passes {@code enough}. */
    Solved solve(int[] demand, int[] supply, long enough) {
        int sizes = cutting.sizes();
        int kinds = cutting.kinds();
        long dearest = 1;
        for (int k = 0; k < kinds; k++) dearest = Math.max(dearest, cutting.price[k]);
        long scale = Math.max(1, 1_000_000_000L / dearest);
        GrowingProgram program = program(demand, supply);
        for (int i = 0; i < sizes; i++) program.add(LEFT_OVER, 0, Double.POSITIVE_INFINITY, List.of(new Term(i, 1)));
        List<Pattern> columns = new ArrayList<>();
        Set<Pattern> inProgram = new LinkedHashSet<>();
        for (Pattern pattern : starters(demand, supply)) add(program, pattern, dearest, columns, inProgram);
        for (Pattern pattern : pool) {
            if (pattern.within(demand, supply)) add(program, pattern, dearest, columns, inProgram);
        }
        Bound strongest = new Bound(List.of(), List.of(), Long.MIN_VALUE);
        while (true) {
            Answer answer = program.minimise(PIVOTS);
            if (!(answer instanceof Answer.Optimal optimal)) {
                return new Solved(0, Long.MIN_VALUE, false, List.of(), List.of(), List.of(), scale, Long.MIN_VALUE);
            }
            effort.add(sizes + columns.size());
            long[] worth = new long[sizes];
            for (int i = 0; i < sizes; i++) {
                double dual = Math.max(0, optimal.duals().get(i)) * dearest * scale;
                worth[i] = demand[i] == 0 ? 0 : (long) Math.min(dual, 4e15);
            }
            long[] best = new long[kinds];
            boolean grown = false;
            for (int k = 0; k < kinds; k++) {
                if (supply[k] <= 0) continue;
                Knapsack.Fill fill = Knapsack.best(cutting.size, worth, demand, cutting.room[k], effort);
                best[k] = fill.worth();
                double saves = fill.worth()
                        - (double) cutting.price[k] * scale
                        + optimal.duals().get(sizes + k) * dearest * scale;
                Pattern found = new Pattern(k, fill.counts());
                if (saves > PAYS * dearest * scale && !inProgram.contains(found)) {
                    add(program, found, dearest, columns, inProgram);
                    pool.add(found);
                    grown = true;
                }
            }
            Bound bound = bound(demand, supply, worth, best, scale);
            if (bound.scaled > strongest.scaled) strongest = bound;
            boolean enoughShown = ceil(strongest.scaled, scale) > enough;
            if (!grown || enoughShown || effort.spent()) {
                return solved(optimal, columns, strongest, scale, dearest, !grown);
            }
        }
    }

    private GrowingProgram program(int[] demand, int[] supply) {
        int rows = cutting.sizes() + cutting.kinds();
        double[] lower = new double[rows];
        double[] upper = new double[rows];
        for (int i = 0; i < cutting.sizes(); i++) {
            lower[i] = demand[i];
            upper[i] = Double.POSITIVE_INFINITY;
        }
        for (int k = 0; k < cutting.kinds(); k++) {
            int row = cutting.sizes() + k;
            lower[row] = Double.NEGATIVE_INFINITY;
            upper[row] = supply[k] == Cutting.UNLIMITED ? Double.POSITIVE_INFINITY : supply[k];
        }
        return new GrowingProgram(lower, upper);
    }

    /** For each size a bar filled with it as far as it goes, from the kind where a piece is cheapest. */
    private List<Pattern> starters(int[] demand, int[] supply) {
        List<Pattern> found = new ArrayList<>();
        for (int i = 0; i < cutting.sizes(); i++) {
            int bestKind = -1;
            double least = 0;
            for (int k = 0; k < cutting.kinds(); k++) {
                long times = Math.min(demand[i], cutting.room[k] / cutting.size[i]);
                if (supply[k] <= 0 || times <= 0) continue;
                double each = (double) cutting.price[k] / times;
                if (bestKind < 0 || each < least) {
                    bestKind = k;
                    least = each;
                }
            }
            if (bestKind < 0) continue;
            int[] counts = new int[cutting.sizes()];
            counts[i] = (int) Math.min(demand[i], cutting.room[bestKind] / cutting.size[i]);
            found.add(Pattern.of(bestKind, counts));
        }
        return found;
    }

    private void add(
            GrowingProgram program, Pattern pattern, long dearest, List<Pattern> columns, Set<Pattern> inProgram) {
        if (!inProgram.add(pattern)) return;
        List<Term> terms = new ArrayList<>();
        for (int i = 0; i < cutting.sizes(); i++) {
            if (pattern.counts().get(i) > 0)
                terms.add(new Term(i, pattern.counts().get(i)));
        }
        terms.add(new Term(cutting.sizes() + pattern.kind(), 1));
        program.add((double) cutting.price[pattern.kind()] / dearest, 0, Double.POSITIVE_INFINITY, terms);
        columns.add(pattern);
    }

    private record Bound(List<Long> worth, List<Long> best, long scaled) {}

    /** The Lagrangian bound; where a kind without limit would be oversold, all worths are cut down until it is not. */
    private Bound bound(int[] demand, int[] supply, long[] worth, long[] best, long scale) {
        BigInteger top = BigInteger.ONE;
        BigInteger under = BigInteger.ONE;
        for (int k = 0; k < best.length; k++) {
            if (supply[k] != Cutting.UNLIMITED) continue;
            BigInteger price = BigInteger.valueOf(cutting.price[k] * scale);
            BigInteger sold = BigInteger.valueOf(best[k]);
            if (price.multiply(under).compareTo(sold.multiply(top)) < 0) {
                top = price;
                under = sold;
            }
        }
        List<Long> worths = new ArrayList<>();
        List<Long> bests = new ArrayList<>();
        long sum = 0;
        for (int i = 0; i < worth.length; i++) {
            long cut = BigInteger.valueOf(worth[i]).multiply(top).divide(under).longValueExact();
            worths.add(cut);
            sum = Math.addExact(sum, Math.multiplyExact(cut, (long) demand[i]));
        }
        for (int k = 0; k < best.length; k++) {
            long cut = BigInteger.valueOf(best[k]).multiply(top).divide(under).longValueExact();
            bests.add(cut);
            long over = Math.min(0, cutting.price[k] * scale - cut);
            if (supply[k] != Cutting.UNLIMITED && supply[k] > 0)
                sum = Math.addExact(sum, Math.multiplyExact(over, (long) supply[k]));
        }
        return new Bound(worths, bests, sum);
    }

    private Solved solved(
            Answer.Optimal optimal, List<Pattern> columns, Bound bound, long scale, long dearest, boolean finished) {
        int sizes = cutting.sizes();
        double left = 0;
        for (int i = 0; i < sizes; i++) left += optimal.values().get(i);
        List<Share> shares = new ArrayList<>();
        // columns found after the last solution have no share in it
        for (int c = 0; sizes + c < optimal.values().size(); c++) {
            double times = optimal.values().get(sizes + c);
            if (times > 1e-9) shares.add(new Share(columns.get(c), times));
        }
        return new Solved(
                optimal.cost() * dearest,
                ceil(bound.scaled, scale),
                finished && left < 1e-7,
                shares,
                bound.worth,
                bound.best,
                scale,
                bound.scaled);
    }

    private static long ceil(long scaled, long scale) {
        return -Math.floorDiv(-scaled, scale);
    }
}
