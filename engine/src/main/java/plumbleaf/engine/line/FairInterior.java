package plumbleaf.engine.line;

import java.util.Arrays;
import java.util.List;

/**
 * Solves a {@link FairProgram} by the predictor-corrector interior point method. Since every row of the program knows only neighbours, one step is one banded
 * solve, and the work grows as the number of posts. The multipliers it ends with bound the cost of every line from below: that is the proof.
 * Source: S. Mehrotra, On the implementation of a primal-dual interior point method, SIAM J. Optimization 2 (1992) 575-601. Check: FairingTest, against the
 * simplex method.
 */
final class FairInterior {
    private static final int MOST_STEPS = 120;

    /** Slack times multiplier at the end: the cost is then known to well below what anybody sees. */
    private static final double SMALL = 1e-14;

    /** A row missed by no more than this is kept: rounding. */
    private static final double KEPT = 1e-10;

    /** What a line that misses rows costs more than any that keeps them, for each unit missed. */
    private static final double FAR = 1e12;

    /** How near to the edge of what is allowed a step goes. */
    private static final double SHY = 0.9995;

    private final FairProgram program;
    private final int rows;
    private final int pairs;
    private final double[] gap;
    private final double[] size;
    private final double[] slack;
    private final double[] multiplier;
    private final double[] missing;
    private final double[] gapPull;
    private final double[] sizePull;
    private final double[] gapStep;
    private final double[] sizeStep;
    private final double[] slackStep;
    private final double[] multiplierStep;
    private final double[] rest;
    private final double[] countedGaps;
    private final double[] countedSizes;
    private final BandedSolve matrix;
    private final boolean limited;
    private double countedBySolve;

    /** A line found, what it costs, and what no line costs less than. */
    static final class Line {
        private final double[] gapsIn;
        private final double cost;
        private final double bound;

        Line(double[] gapsIn, double cost, double bound) {
            this.gapsIn = gapsIn.clone();
            this.cost = cost;
            this.bound = bound;
        }

        double[] gapsIn() {
            return gapsIn.clone();
        }

        double cost() {
            return cost;
        }

        double bound() {
            return bound;
        }
    }

    private FairInterior(FairProgram program, double start) {
        this.program = program;
        this.rows = program.held().size();
        int sizes = program.sizes().size();
        this.pairs = 2 * rows + 3 * sizes + 1;
        this.limited = program.totalMost() < Double.POSITIVE_INFINITY;
        gap = new double[program.gaps()];
        size = new double[sizes];
        slack = new double[pairs];
        multiplier = new double[pairs];
        missing = new double[pairs];
        gapPull = new double[program.gaps()];
        sizePull = new double[sizes];
        gapStep = new double[program.gaps()];
        sizeStep = new double[sizes];
        slackStep = new double[pairs];
        multiplierStep = new double[pairs];
        rest = new double[pairs];
        countedGaps = new double[program.gaps()];
        countedSizes = new double[sizes];
        matrix = new BandedSolve(program.gaps());
        Arrays.fill(gap, start);
        for (int i = 0; i < sizes; i++) {
            FairProgram.Size each = program.sizes().get(i);
            size[i] =
                    Math.min(Math.abs(each.of(gap)) + 0.1, each.most() < Double.POSITIVE_INFINITY ? each.most() : 1e9);
        }
        Arrays.fill(slack, 1);
        Arrays.fill(multiplier, 1);
        for (int p = 0; p < pairs; p++) if (!isThere(p)) multiplier[p] = 0;
        measure();
        for (int p = 0; p < pairs; p++) slack[p] = isThere(p) ? Math.max(0.1, missing[p] + 1) : 1;
    }

    /** @param start a gap that all posts begin with */
    static Line solve(FairProgram program, double start) {
        return new FairInterior(program, start).line();
    }

    private boolean isThere(int pair) {
        if (pair < 2 * rows) return true;
        if (pair == pairs - 1) return limited;
        int of = pair - 2 * rows;
        return of % 3 != 2 || program.sizes().get(of / 3).most() < Double.POSITIVE_INFINITY;
    }

    private Line line() {
        double[] best = gap.clone();
        double least = Double.POSITIVE_INFINITY;
        double bound = Double.NEGATIVE_INFINITY;
        for (int step = 0; step < MOST_STEPS; step++) {
            measure();
            pull();
            double product = product();
            double off = largest(missing);
            if (!(product < Double.POSITIVE_INFINITY && off < Double.POSITIVE_INFINITY)) break;
            double here = bound();
            if (here > bound) bound = here;
            double cost = cost(gap) + (off > KEPT ? FAR * off : 0);
            if (cost < least) {
                least = cost;
                System.arraycopy(gap, 0, best, 0, gap.length);
            }
            if (product < SMALL && off < KEPT) break;
            weigh();
            for (int p = 0; p < pairs; p++) rest[p] = slack[p] * multiplier[p];
            direction();
            double primal = reach(slack, slackStep);
            double dual = reach(multiplier, multiplierStep);
            double after = productAfter(primal, dual);
            double share = after / product;
            double centre = share * share * share * product;
            for (int p = 0; p < pairs; p++)
                rest[p] = isThere(p) ? slack[p] * multiplier[p] + slackStep[p] * multiplierStep[p] - centre : 0;
            direction();
            go(Math.min(1, SHY * reach(slack, slackStep)), Math.min(1, SHY * reach(multiplier, multiplierStep)));
        }
        return new Line(best, cost(best), bound);
    }

    /** What each slack misses of its row. */
    private void measure() {
        List<FairProgram.Held> held = program.held();
        for (int i = 0; i < rows; i++) {
            FairProgram.Held row = held.get(i);
            double at = along(row, gap);
            missing[2 * i] = at - row.least() - slack[2 * i];
            missing[2 * i + 1] = row.most() - at - slack[2 * i + 1];
        }
        double total = 0;
        for (int i = 0; i < size.length; i++) {
            FairProgram.Size each = program.sizes().get(i);
            int p = 2 * rows + 3 * i;
            double sum = each.of(gap);
            missing[p] = size[i] - sum - slack[p];
            missing[p + 1] = size[i] + sum - slack[p + 1];
            missing[p + 2] = isThere(p + 2) ? each.most() - size[i] - slack[p + 2] : 0;
            if (each.counted()) total += size[i];
        }
        missing[pairs - 1] = limited ? program.totalMost() - total - slack[pairs - 1] : 0;
    }

    /** How far cost and multipliers are from holding each other. */
    private void pull() {
        Arrays.fill(gapPull, 0);
        for (int i = 0; i < rows; i++) push(program.held().get(i), multiplier[2 * i + 1] - multiplier[2 * i], gapPull);
        for (int i = 0; i < size.length; i++) {
            FairProgram.Size each = program.sizes().get(i);
            int p = 2 * rows + 3 * i;
            push(each, multiplier[p] - multiplier[p + 1], gapPull);
            sizePull[i] = each.cost()
                    - multiplier[p]
                    - multiplier[p + 1]
                    + multiplier[p + 2]
                    + (each.counted() ? multiplier[pairs - 1] : 0);
        }
    }

    private static double along(FairProgram.Held row, double[] gaps) {
        double at = row.a() * gaps[row.first()];
        return row.b() == 0 ? at : at + row.b() * gaps[row.first() + 1];
    }

    private static void push(FairProgram.Held row, double by, double[] sums) {
        sums[row.first()] += row.a() * by;
        if (row.b() != 0) sums[row.first() + 1] += row.b() * by;
    }

    private static void push(FairProgram.Size row, double by, double[] sums) {
        sums[row.first()] += row.a() * by;
        if (row.b() != 0) sums[row.first() + 1] += row.b() * by;
        if (row.c() != 0) sums[row.first() + 2] += row.c() * by;
    }

    private double weight(int pair) {
        return multiplier[pair] / slack[pair];
    }

    /** The matrix of the step: sizes are taken out of it first, since each touches one row alone. */
    private void weigh() {
        matrix.clear(0);
        for (int i = 0; i < rows; i++) {
            FairProgram.Held row = program.held().get(i);
            matrix.add(row.first(), row.a(), row.b(), 0, weight(2 * i) + weight(2 * i + 1));
        }
        for (int i = 0; i < size.length; i++) {
            FairProgram.Size each = program.sizes().get(i);
            int p = 2 * rows + 3 * i;
            double up = weight(p);
            double down = weight(p + 1);
            double over = weight(p + 2);
            matrix.add(
                    each.first(),
                    each.a(),
                    each.b(),
                    each.c(),
                    (4 * up * down + over * (up + down)) / (up + down + over));
        }
        matrix.factor();
        if (!limited) return;
        Arrays.fill(countedGaps, 0);
        for (int i = 0; i < size.length; i++)
            countedSizes[i] = program.sizes().get(i).counted() ? 1 : 0;
        solve(countedGaps, countedSizes);
        countedBySolve = counted(countedSizes);
    }

    private double counted(double[] sizes) {
        double sum = 0;
        for (int i = 0; i < size.length; i++) if (program.sizes().get(i).counted()) sum += sizes[i];
        return sum;
    }

    /** From right-hand sides to steps, in place; the limit of the total left aside. */
    private void solve(double[] gaps, double[] sizes) {
        for (int i = 0; i < size.length; i++) {
            int p = 2 * rows + 3 * i;
            double all = weight(p) + weight(p + 1) + weight(p + 2);
            push(program.sizes().get(i), -(weight(p + 1) - weight(p)) / all * sizes[i], gaps);
        }
        matrix.solve(gaps);
        for (int i = 0; i < size.length; i++) {
            int p = 2 * rows + 3 * i;
            double all = weight(p) + weight(p + 1) + weight(p + 2);
            FairProgram.Size each = program.sizes().get(i);
            sizes[i] = (sizes[i] - (weight(p + 1) - weight(p)) * (each.of(gaps) - each.k())) / all;
        }
    }

    private double pressed(int pair) {
        return (rest[pair] + multiplier[pair] * missing[pair]) / slack[pair];
    }

    /** The step for the products wanted in {@code rest}. */
    private void direction() {
        for (int j = 0; j < gap.length; j++) gapStep[j] = -gapPull[j];
        for (int i = 0; i < rows; i++) push(program.held().get(i), pressed(2 * i + 1) - pressed(2 * i), gapStep);
        for (int i = 0; i < size.length; i++) {
            int p = 2 * rows + 3 * i;
            push(program.sizes().get(i), pressed(p) - pressed(p + 1), gapStep);
            sizeStep[i] = -sizePull[i] - pressed(p) - pressed(p + 1) + pressed(p + 2);
        }
        solve(gapStep, sizeStep);
        int last = pairs - 1;
        if (limited) {
            double more = (multiplier[last] * (counted(sizeStep) - missing[last]) - rest[last])
                    / (slack[last] + multiplier[last] * countedBySolve);
            for (int j = 0; j < gap.length; j++) gapStep[j] -= more * countedGaps[j];
            for (int i = 0; i < size.length; i++) sizeStep[i] -= more * countedSizes[i];
        }
        for (int i = 0; i < rows; i++) {
            double moved = along(program.held().get(i), gapStep);
            slackStep[2 * i] = moved + missing[2 * i];
            slackStep[2 * i + 1] = -moved + missing[2 * i + 1];
        }
        for (int i = 0; i < size.length; i++) {
            FairProgram.Size each = program.sizes().get(i);
            int p = 2 * rows + 3 * i;
            double moved = each.of(gapStep) - each.k();
            slackStep[p] = sizeStep[i] - moved + missing[p];
            slackStep[p + 1] = sizeStep[i] + moved + missing[p + 1];
            slackStep[p + 2] = isThere(p + 2) ? -sizeStep[i] + missing[p + 2] : 0;
        }
        slackStep[last] = limited ? -counted(sizeStep) + missing[last] : 0;
        for (int p = 0; p < pairs; p++)
            multiplierStep[p] = isThere(p) ? -(rest[p] + multiplier[p] * slackStep[p]) / slack[p] : 0;
    }

    private static double reach(double[] from, double[] step) {
        double reach = 1 / SHY;
        for (int p = 0; p < from.length; p++) if (step[p] < 0) reach = Math.min(reach, -from[p] / step[p]);
        return reach;
    }

    private void go(double primal, double dual) {
        for (int j = 0; j < gap.length; j++) gap[j] += primal * gapStep[j];
        for (int i = 0; i < size.length; i++) size[i] += primal * sizeStep[i];
        for (int p = 0; p < pairs; p++) {
            slack[p] += primal * slackStep[p];
            multiplier[p] += dual * multiplierStep[p];
        }
    }

    private double product() {
        return productAfter(0, 0);
    }

    private double productAfter(double primal, double dual) {
        double sum = 0;
        int there = 0;
        for (int p = 0; p < pairs; p++) {
            if (!isThere(p)) continue;
            sum += (slack[p] + primal * slackStep[p]) * (multiplier[p] + dual * multiplierStep[p]);
            there++;
        }
        return sum / there;
    }

    private static double largest(double[] values) {
        double largest = 0;
        for (double value : values) largest = Math.max(largest, Math.abs(value));
        return largest;
    }

    private double cost(double[] gaps) {
        double cost = 0;
        for (FairProgram.Size each : program.sizes()) cost += each.cost() * Math.abs(each.of(gaps));
        return cost;
    }

    /** No line costs less than the multipliers say: {@code -sum z b}, less what the pulls that are left could still gain within the bounds. */
    private double bound() {
        double bound = 0;
        for (int i = 0; i < rows; i++) {
            FairProgram.Held row = program.held().get(i);
            bound += multiplier[2 * i] * row.least() - multiplier[2 * i + 1] * row.most();
        }
        for (int i = 0; i < size.length; i++) {
            FairProgram.Size each = program.sizes().get(i);
            int p = 2 * rows + 3 * i;
            bound += (multiplier[p] - multiplier[p + 1]) * each.k();
            if (isThere(p + 2)) bound -= multiplier[p + 2] * each.most();
            double most = isThere(p + 2) ? each.most() : 1e6;
            bound += Math.min(0, sizePull[i] * most);
        }
        if (limited) bound -= multiplier[pairs - 1] * program.totalMost();
        for (int j = 0; j < gap.length; j++) {
            FairProgram.Held box = program.held().get(j);
            bound += Math.min(gapPull[j] * box.least(), gapPull[j] * box.most());
        }
        return bound;
    }
}
