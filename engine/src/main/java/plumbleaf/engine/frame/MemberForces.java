package plumbleaf.engine.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/** Finds where the bending of a member peaks: between breaks moments are of the second degree at most, so each peak is a root. */
final class MemberForces {
    private static final int HALVINGS = 200;

    private MemberForces() {}

    static Extremes extremes(Assembly assembly, CaseState state, int member) {
        Element element = assembly.elements.get(member);
        List<Extreme> candidates = new ArrayList<>();
        double[] breaks = element.breaks(state.loads.get(member));
        for (int i = 0; i + 1 < breaks.length; i++) {
            double from = breaks[i];
            double to = breaks[i + 1];
            Internal first = state.internalAt(assembly, member, from, true);
            Internal middle = state.internalAt(assembly, member, (from + to) / 2, false);
            Internal last = state.internalAt(assembly, member, to, false);
            candidates.add(new Extreme(from, first));
            candidates.add(new Extreme(to, last));
            Quadratic my = Quadratic.through(first.myLbIn(), middle.myLbIn(), last.myLbIn());
            Quadratic mz = Quadratic.through(first.mzLbIn(), middle.mzLbIn(), last.mzLbIn());
            TreeSet<Double> inside = new TreeSet<>();
            my.turningPoint(inside);
            mz.turningPoint(inside);
            steepestBending(my, mz, inside);
            for (double share : inside) {
                double at = from + share * (to - from);
                candidates.add(new Extreme(at, state.internalAt(assembly, member, at, true)));
            }
        }
        return new Extremes(
                most(candidates, e -> e.forces().myLbIn()),
                most(candidates, e -> -e.forces().myLbIn()),
                most(candidates, e -> e.forces().mzLbIn()),
                most(candidates, e -> -e.forces().mzLbIn()),
                most(candidates, e -> e.forces().bendingLbIn()));
    }

    private static Extreme most(List<Extreme> candidates, ToDoubleFunction<Extreme> size) {
        Extreme most = candidates.get(0);
        for (Extreme each : candidates) if (size.applyAsDouble(each) > size.applyAsDouble(most)) most = each;
        return most;
    }

    /** Roots of {@code my my' + mz mz'}, a cubic: cut where its own slope turns, then halved. */
    private static void steepestBending(Quadratic my, Quadratic mz, SortedSet<Double> inside) {
        double c3 = 2 * (my.c2 * my.c2 + mz.c2 * mz.c2);
        double c2 = 3 * (my.c2 * my.c1 + mz.c2 * mz.c1);
        double c1 = my.c1 * my.c1 + mz.c1 * mz.c1 + 2 * (my.c2 * my.c0 + mz.c2 * mz.c0);
        double c0 = my.c1 * my.c0 + mz.c1 * mz.c0;
        if (c3 == 0) return;
        List<Double> cuts = new ArrayList<>();
        cuts.add(0.0);
        double root = c2 * c2 - 3 * c3 * c1;
        if (root > 0) {
            double low = (-c2 - Math.sqrt(root)) / (3 * c3);
            double high = (-c2 + Math.sqrt(root)) / (3 * c3);
            if (low > 0 && low < 1) cuts.add(low);
            if (high > 0 && high < 1) cuts.add(high);
        }
        cuts.add(1.0);
        for (int i = 0; i + 1 < cuts.size(); i++) {
            double a = cuts.get(i);
            double b = cuts.get(i + 1);
            double atA = ((c3 * a + c2) * a + c1) * a + c0;
            double atB = ((c3 * b + c2) * b + c1) * b + c0;
            if (atA * atB >= 0) continue;
            for (int n = 0; n < HALVINGS && b - a > 0; n++) {
                double m = (a + b) / 2;
                if (m <= a || m >= b) break;
                double atM = ((c3 * m + c2) * m + c1) * m + c0;
                if (atA * atM > 0) a = m;
                else b = m;
            }
            inside.add((a + b) / 2);
        }
    }

    /** {@code c0 + c1 s + c2 s^2}, s from 0 to 1. */
    private static final class Quadratic {
        final double c0;
        final double c1;
        final double c2;

        private Quadratic(double c0, double c1, double c2) {
            this.c0 = c0;
            this.c1 = c1;
            this.c2 = c2;
        }

        static Quadratic through(double start, double middle, double end) {
            return new Quadratic(start, 4 * middle - 3 * start - end, 2 * start - 4 * middle + 2 * end);
        }

        void turningPoint(SortedSet<Double> inside) {
            if (c2 == 0) return;
            double at = -c1 / (2 * c2);
            if (at > 0 && at < 1) inside.add(at);
        }
    }
}
