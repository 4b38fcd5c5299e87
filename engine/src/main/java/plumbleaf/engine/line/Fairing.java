package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The fair line of a racked fence: straight between posts, its gap to the ground within limits at every point where the ground bends. Of all such lines the one
 * whose largest change of slope at a post is least; of those the one whose changes are least in all; of those the one nearest to the wanted gap at the
 * posts. Three questions, one after another, each keeping what the one before reached. The first is answered by halving ({@link LeastBend}), the others are
 * linear programs ({@link FairInterior}); each answer comes with its proof, and the work grows as the number of posts: ten miles take a second or two.
 *
 * <p>Slopes are in inches per hundred inches, so that numbers are of size 1 to 100. Check: FairingTest, against the simplex method.
 */
final class Fairing {
    /** What a later question may lose of an earlier one's measure: rounding of the solver. */
    private static final double KEPT = 2e-8;

    /** Gaps may pass their limits by this much: less than a hair, more than rounding. */
    static final double GAP_ROUNDING_IN = 1e-6;

    /**
     * A stretch of fence whose top runs through.
     *
     * @param stationsIn of the posts, growing
     * @param groundIn elevation of the ground at each post
     * @param smooth for each post, whether a change of slope shows there: not at the ends, and not at corners
     * @param bends where the ground bends between posts
     */
    record Input(
            List<Double> stationsIn,
            List<Double> groundIn,
            List<Boolean> smooth,
            List<Bend> bends,
            double gapMinIn,
            double gapMaxIn,
            double wantedIn) {
        Input {
            stationsIn = List.copyOf(stationsIn);
            groundIn = List.copyOf(groundIn);
            smooth = List.copyOf(smooth);
            bends = List.copyOf(bends);
        }

        int posts() {
            return stationsIn.size();
        }

        /** Level length of a bay in hundreds of inches. */
        double hundreds(int bay) {
            return (stationsIn.get(bay + 1) - stationsIn.get(bay)) / 100;
        }

        /** By how much the chord of the ground gets steeper at a post, in inches per hundred. */
        double groundBend(int post) {
            double before = (groundIn.get(post) - groundIn.get(post - 1)) / hundreds(post - 1);
            return (groundIn.get(post + 1) - groundIn.get(post)) / hundreds(post) - before;
        }

        /** How far the ground at a bend lies over the chord of its bay. */
        double overChord(Bend bend) {
            int j = bend.bay();
            return bend.groundIn() - groundIn.get(j) - (groundIn.get(j + 1) - groundIn.get(j)) * bend.share();
        }
    }

    /** A point where the ground bends, between two posts: the place of the first, the share of the way to the next, its elevation. */
    record Bend(int bay, double share, double groundIn) {}

    /**
     * @param gapsIn between the line and the ground at each post
     * @param largestChange largest change of slope, rise over run
     * @param sharpest the post where it is; the first where the line bends nowhere
     * @param largestAtLeast no line within the gaps has a smaller largest change
     * @param totalChange sum of the changes
     * @param totalAtLeast no line within the gaps and that largest change has a smaller sum
     */
    record Faired(
            List<Double> gapsIn,
            double largestChange,
            int sharpest,
            double largestAtLeast,
            double totalChange,
            double totalAtLeast) {
        Faired {
            gapsIn = List.copyOf(gapsIn);
        }
    }

    private Fairing() {}

    /** The fair line; none when no line with knots at the posts keeps the gaps. */
    static Optional<Faired> of(Input input) {
        if (input.gapMinIn() > input.gapMaxIn()) return Optional.empty();
        return LeastBend.of(input).map(least -> within(input, least));
    }

    private static Faired within(Input input, LeastBend.Bracket least) {
        double largest = least.some() + KEPT;
        double start = (input.gapMinIn() + input.gapMaxIn()) / 2;
        FairInterior.Line fair = FairInterior.solve(FairProgram.leastTotal(input, largest), start);
        double total = totalChange(input, fair.gapsIn());
        FairInterior.Line near =
                FairInterior.solve(FairProgram.nearest(input, largest, total + KEPT * input.posts()), start);
        boolean keeps = keeps(input, near.gapsIn())
                && largestChange(input, near.gapsIn()) <= largest + KEPT
                && totalChange(input, near.gapsIn()) <= total + 2 * KEPT * input.posts();
        double[] gaps = keeps ? near.gapsIn() : fair.gapsIn();
        List<Double> list = new ArrayList<>();
        for (double gap : gaps) list.add(Math.max(input.gapMinIn(), Math.min(input.gapMaxIn(), gap)));
        return new Faired(
                list,
                largestChange(input, gaps) / 100,
                sharpest(input, gaps),
                least.none() / 100,
                totalChange(input, gaps) / 100,
                Math.max(0, fair.bound()) / 100);
    }

    private static boolean keeps(Input input, double[] gaps) {
        double least = input.gapMinIn() - GAP_ROUNDING_IN;
        double most = input.gapMaxIn() + GAP_ROUNDING_IN;
        for (double gap : gaps) if (!(gap >= least && gap <= most)) return false;
        for (Bend bend : input.bends()) {
            double gap =
                    gaps[bend.bay()] * (1 - bend.share()) + gaps[bend.bay() + 1] * bend.share() - input.overChord(bend);
            if (!(gap >= least && gap <= most)) return false;
        }
        return true;
    }

    private static double changeAt(Input input, double[] gaps, int j) {
        double before = (gaps[j] - gaps[j - 1]) / input.hundreds(j - 1);
        double after = (gaps[j + 1] - gaps[j]) / input.hundreds(j);
        return Math.abs(after - before + input.groundBend(j));
    }

    private static double largestChange(Input input, double[] gaps) {
        int sharpest = sharpest(input, gaps);
        return sharpest == 0 ? 0 : changeAt(input, gaps, sharpest);
    }

    private static int sharpest(Input input, double[] gaps) {
        int sharpest = 0;
        double largest = 0;
        for (int j = 1; j + 1 < gaps.length; j++) {
            double change = input.smooth().get(j) ? changeAt(input, gaps, j) : 0;
            if (change <= largest) continue;
            largest = change;
            sharpest = j;
        }
        return sharpest;
    }

    private static double totalChange(Input input, double[] gaps) {
        double total = 0;
        for (int j = 1; j + 1 < gaps.length; j++) {
            if (input.smooth().get(j)) total += changeAt(input, gaps, j);
        }
        return total;
    }
}
