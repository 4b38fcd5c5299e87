package plumbleaf.engine.line;

import java.util.Optional;

/**
 * The least largest change of slope that a line with knots at the posts can have within its gaps, found by halving: for a trial change every place and slope
 * that a line may reach at each post, starting from the first, is a convex polygon; it is carried from post to post, widened by the trial change and cut by the
 * gaps of the next bay. Where it gets empty no line bends so little, which is the proof of the lower end; where it lasts to the end one does.
 *
 * <p>The work grows as the number of posts. Places are gaps over the ground in inches, slopes count from the chord of the ground in the bay, in inches per
 * hundred. Check: FairingTest, against the simplex method.
 */
final class LeastBend {
    /** Halvings: from a hundred per cent of grade to below the rounding of a double. */
    private static final int HALVINGS = 60;

    /** Gaps may be missed by this much: rounding of sums, far below a hair. */
    private static final double ROUNDING_IN = 1e-9;

    private final Fairing.Input input;
    private final double[][] cuts;
    private final double steepest;

    private LeastBend(Fairing.Input input) {
        this.input = input;
        this.cuts = cutsOf(input);
        double most = 1;
        for (int bay = 0; bay + 1 < input.posts(); bay++)
            most = Math.max(most, 2 * (input.gapMaxIn() - input.gapMinIn() + 1) / input.hundreds(bay));
        this.steepest = most;
    }

    /**
     * The bracket: no line bends as little as {@code none}, one bends no more than {@code some}; both 0 where a line need not bend at all.
     *
     * @param none per cent of grade
     * @param some per cent of grade
     */
    record Bracket(double none, double some) {}

    /** None where no line keeps the gaps, however much it bends. */
    static Optional<Bracket> of(Fairing.Input input) {
        LeastBend least = new LeastBend(input);
        double high = least.enough();
        if (!least.canBendBy(high)) return Optional.empty();
        if (least.canBendBy(0)) return Optional.of(new Bracket(0, 0));
        double low = 0;
        for (int i = 0; i < HALVINGS && low < high; i++) {
            double middle = (low + high) / 2;
            if (least.canBendBy(middle)) high = middle;
            else low = middle;
        }
        return Optional.of(new Bracket(low, high));
    }

    /** A change of slope that no line within its gaps passes. */
    private double enough() {
        double most = 2 * steepest;
        for (int j = 1; j + 1 < input.posts(); j++) most = Math.max(most, Math.abs(input.groundBend(j)) + 2 * steepest);
        return most;
    }

    /** For each bay its points as share of the way and allowed least and greatest gap over the chord: the far post, then each bend of the ground. */
    private static double[][] cutsOf(Fairing.Input input) {
        int bays = input.posts() - 1;
        int[] count = new int[bays];
        for (Fairing.Bend bend : input.bends()) count[bend.bay()]++;
        double[][] cuts = new double[bays][];
        for (int bay = 0; bay < bays; bay++) {
            cuts[bay] = new double[3 + 3 * count[bay]];
            cuts[bay][0] = 1;
            cuts[bay][1] = input.gapMinIn();
            cuts[bay][2] = input.gapMaxIn();
            count[bay] = 3;
        }
        for (Fairing.Bend bend : input.bends()) {
            double over = input.overChord(bend);
            double[] cut = cuts[bend.bay()];
            int at = count[bend.bay()];
            cut[at] = bend.share();
            cut[at + 1] = input.gapMinIn() + over;
            cut[at + 2] = input.gapMaxIn() + over;
            count[bend.bay()] = at + 3;
        }
        return cuts;
    }

    private boolean canBendBy(double change) {
        ReachedPlaces reached = ReachedPlaces.strip(input.gapMinIn(), input.gapMaxIn(), steepest);
        for (int bay = 0; bay < cuts.length; bay++) {
            if (bay > 0) {
                if (input.smooth().get(bay)) reached.turn(-input.groundBend(bay), change);
                else reached.turnFreely(steepest);
            }
            double length = input.hundreds(bay);
            double[] cut = cuts[bay];
            for (int i = 0; i < cut.length; i += 3) {
                reached.keepAbove(length * cut[i], cut[i + 1] - ROUNDING_IN);
                reached.keepBelow(length * cut[i], cut[i + 2] + ROUNDING_IN);
                if (reached.isEmpty()) return false;
            }
            reached.goOn(length);
        }
        return true;
    }
}
