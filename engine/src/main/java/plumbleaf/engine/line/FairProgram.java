package plumbleaf.engine.line;

import java.util.ArrayList;
import java.util.List;

/**
 * A linear program over a row of gaps: each kept between bounds at the posts and where the ground bends, and a cost on the sizes of some sums of up to three
 * neighbours. Held in plain numbers: {@link FairInterior} alone reads it.
 *
 * @param gaps how many there are
 * @param totalMost the most that the counted sizes may come to together; infinite for no such limit
 */
record FairProgram(int gaps, List<Held> held, List<Size> sizes, double totalMost) {
    FairProgram {
        held = List.copyOf(held);
        sizes = List.copyOf(sizes);
    }

    /** {@code least <= a g[first] + b g[first + 1] <= most}. */
    record Held(int first, double a, double b, double least, double most) {}

    /**
     * {@code |a g[first] + b g[first + 1] + c g[first + 2] + k| <= most}, its size at a cost.
     *
     * @param counted whether it counts in the total
     */
    record Size(int first, double a, double b, double c, double k, double cost, double most, boolean counted) {
        double of(double[] gaps) {
            double sum = a * gaps[first] + k;
            if (b != 0) sum += b * gaps[first + 1];
            if (c != 0) sum += c * gaps[first + 2];
            return sum;
        }
    }

    /** The line of an input whose changes of slope stay within a limit, and cost. */
    static FairProgram leastTotal(Fairing.Input input, double largest) {
        return new FairProgram(input.posts(), held(input), changes(input, largest, 1), Double.POSITIVE_INFINITY);
    }

    /** The line whose changes stay within both limits, and whose distance from the wanted gap costs. */
    static FairProgram nearest(Fairing.Input input, double largest, double total) {
        List<Size> sizes = new ArrayList<>(changes(input, largest, 0));
        for (int j = 0; j < input.posts(); j++)
            sizes.add(new Size(j, 1, 0, 0, -input.wantedIn(), 1, Double.POSITIVE_INFINITY, false));
        return new FairProgram(input.posts(), held(input), sizes, total);
    }

    private static List<Held> held(Fairing.Input input) {
        List<Held> held = new ArrayList<>();
        for (int j = 0; j < input.posts(); j++) held.add(new Held(j, 1, 0, input.gapMinIn(), input.gapMaxIn()));
        for (Fairing.Bend bend : input.bends()) {
            double over = input.overChord(bend);
            held.add(new Held(
                    bend.bay(), 1 - bend.share(), bend.share(), input.gapMinIn() + over, input.gapMaxIn() + over));
        }
        return held;
    }

    private static List<Size> changes(Fairing.Input input, double largest, double cost) {
        List<Size> sizes = new ArrayList<>();
        for (int j = 1; j + 1 < input.posts(); j++) {
            if (!input.smooth().get(j)) continue;
            double before = 1 / input.hundreds(j - 1);
            double after = 1 / input.hundreds(j);
            sizes.add(new Size(j - 1, before, -before - after, after, input.groundBend(j), cost, largest, true));
        }
        return sizes;
    }
}
