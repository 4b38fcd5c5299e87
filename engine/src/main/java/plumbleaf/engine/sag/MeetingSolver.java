package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Offset;

/** Finds what goes through the meeting stile of a pair. Plain numbers: the inside of {@link PairForces}. */
final class MeetingSolver {
    private static final int FOOT = 0;
    private static final int LATCH = 1;
    private static final int TOP = 2;
    private static final int A = 0;
    private static final int B = 1;

    /** Nearer than this, what bars the way is touched and not passed: far below what matters, far above rounding. */
    private static final double TOUCH_IN = 1e-7;

    /** A push less than this is none. */
    private static final double PUSH_LB = 1e-6;

    /** A thing that is not rigid gives this much a pound at least: keeps a stiff tie from being without bounds in the equations. */
    private static final double TIE_IN_PER_LB = 1e-9;

    /**
     * A leaf that is held at its foot.
     *
     * @param holdLb what holds it there, + outward
     * @param latchIn outward movement of its latch under the loads; the foot does not move
     * @param topIn the same of its top
     * @param atLatch how it answers a pound outward at its latch
     * @param atTop the same at its top
     */
    record Leaf(double holdLb, double latchIn, double topIn, Give atLatch, Give atTop) {
        double movedIn(int point) {
            return point == LATCH ? latchIn : point == TOP ? topIn : 0;
        }

        double giveIn(int point, int push) {
            if (push == FOOT || point == FOOT) return 0;
            Give give = push == LATCH ? atLatch : atTop;
            return point == LATCH ? give.latchIn() : give.topIn();
        }

        /** What the hold becomes more under a pound outward. */
        double holdPer(int push) {
            return push == FOOT ? -1 : push == LATCH ? atLatch.holdLb() : atTop.holdLb();
        }
    }

    /** Movement of latch and top under a pound, and what the hold at the foot becomes more. */
    record Give(double latchIn, double topIn, double holdLb) {}

    /** A tie or a bar: between a leaf and the ground, or between both leaves where {@code leaf} is A and {@code between} holds. */
    private record Tie(String what, int leaf, int point, boolean between, double givePerLb, boolean oneWay) {}

    private final List<Leaf> leaves;
    private final int barred;
    private final List<Tie> ties = new ArrayList<>();

    private MeetingSolver(Leaf a, Leaf b, PairHold hold) {
        this.leaves = List.of(a, b);
        boolean aIsActive = hold.active() == Side.LEFT;
        this.barred = hold.barred();
        double rod = 1 / hold.rodLbPerIn();
        if (hold.rods() == 2 || !aIsActive) ties.add(new Tie("rod a", A, FOOT, false, rod, false));
        if (hold.rods() == 2 || aIsActive) ties.add(new Tie("rod b", B, FOOT, false, rod, false));
        ties.add(new Tie("latch", A, LATCH, true, TIE_IN_PER_LB, false));
        if (hold.topKeeper()) {
            ties.add(new Tie("keeper a", A, TOP, false, TIE_IN_PER_LB, false));
            ties.add(new Tie("keeper b", B, TOP, false, TIE_IN_PER_LB, false));
        }
        if (hold.strip() && !hold.topKeeper()) ties.add(new Tie("strip top", A, TOP, true, TIE_IN_PER_LB, true));
        if (hold.stop()) {
            ties.add(new Tie("stop a", A, FOOT, false, TIE_IN_PER_LB, true));
            ties.add(new Tie("stop b", B, FOOT, false, TIE_IN_PER_LB, true));
        } else if (hold.strip()) ties.add(new Tie("strip foot", A, FOOT, true, TIE_IN_PER_LB, true));
        this.activeSign = aIsActive ? 1 : -1;
    }

    /** Between the leaves the first one is barred from passing the other: + where that is leaf a. */
    private final int activeSign;

    static MeetingForces solve(Leaf a, Leaf b, PairHold hold, Combination combination, WindWay wind) {
        return new MeetingSolver(a, b, hold).solved(combination, wind);
    }

    /** Every choice of the one-way ties is tried, fewest pressed first; one of them is at peace: nothing passed, nothing pulled. */
    private MeetingForces solved(Combination combination, WindWay wind) {
        List<Integer> oneWay = new ArrayList<>();
        for (int i = 0; i < ties.size(); i++) if (ties.get(i).oneWay()) oneWay.add(i);
        double[] best = new double[0];
        double least = Double.POSITIVE_INFINITY;
        for (int choice = 0; choice < 1 << oneWay.size(); choice++) {
            boolean[] acts = new boolean[ties.size()];
            for (int i = 0; i < ties.size(); i++) acts[i] = !ties.get(i).oneWay();
            for (int i = 0; i < oneWay.size(); i++) acts[oneWay.get(i)] = (choice & 1 << i) != 0;
            double[] found = with(acts);
            double wrong = wrong(acts, found);
            if (wrong < least) {
                least = wrong;
                best = found;
            }
            if (wrong == 0) break;
        }
        return forces(best, combination, wind);
    }

    /** Unknowns: the force of every tie on its leaf (on leaf a where it is between), then how far each leaf swings on its pins. */
    private double[] with(boolean[] acts) {
        int n = ties.size();
        double[][] m = new double[n + 2][n + 2];
        double[] right = new double[n + 2];
        for (int i = 0; i < n; i++) {
            Tie tie = ties.get(i);
            if (!acts[i]) {
                m[i][i] = 1;
                continue;
            }
            addMovement(m[i], right, i, tie.leaf(), tie.point(), 1);
            if (tie.between()) addMovement(m[i], right, i, B, tie.point(), -1);
            m[i][i] += tie.givePerLb();
        }
        for (int leaf = A; leaf <= B; leaf++) {
            right[n + leaf] = leaves.get(leaf).holdLb();
            for (int i = 0; i < n; i++)
                m[n + leaf][i] = -leaves.get(leaf).holdPer(ties.get(i).point()) * onLeaf(ties.get(i), leaf);
        }
        return Elimination.solve(m, right);
    }

    /** Adds how far a point of a leaf moves outward, times a sign, to a row; what the loads do goes to the right. */
    private void addMovement(double[] row, double[] right, int at, int leaf, int point, int sign) {
        right[at] -= sign * leaves.get(leaf).movedIn(point);
        for (int j = 0; j < ties.size(); j++)
            row[j] += sign * leaves.get(leaf).giveIn(point, ties.get(j).point()) * onLeaf(ties.get(j), leaf);
        row[ties.size() + leaf] += sign;
    }

    private static int onLeaf(Tie tie, int leaf) {
        if (tie.leaf() == leaf) return 1;
        return tie.between() ? -1 : 0;
    }

    /** How far a choice is from peace: pulls of what can only push, and passings of what bars. */
    private double wrong(boolean[] acts, double[] found) {
        double wrong = 0;
        for (int i = 0; i < ties.size(); i++) {
            Tie tie = ties.get(i);
            if (!tie.oneWay()) continue;
            int way = barred * (tie.between() ? activeSign : 1);
            if (acts[i]) {
                double push = -way * found[i];
                if (push < -PUSH_LB) wrong -= push;
            } else {
                double past = way * parting(tie, found);
                if (past > TOUCH_IN) wrong += past * 1e6;
            }
        }
        return wrong;
    }

    private double parting(Tie tie, double[] found) {
        double own = moved(tie.leaf(), tie.point(), found);
        return tie.between() ? own - moved(B, tie.point(), found) : own;
    }

    private double moved(int leaf, int point, double[] found) {
        double moved = leaves.get(leaf).movedIn(point) + found[ties.size() + leaf];
        for (int j = 0; j < ties.size(); j++)
            moved += leaves.get(leaf).giveIn(point, ties.get(j).point()) * onLeaf(ties.get(j), leaf) * found[j];
        return moved;
    }

    private MeetingForces forces(double[] found, Combination combination, WindWay wind) {
        return new MeetingForces(
                combination,
                wind,
                force("rod a", found),
                force("rod b", found),
                force("latch", found),
                force("strip foot", found),
                force("strip top", found),
                force("stop a", found),
                force("stop b", found),
                force("keeper a", found),
                force("keeper b", found),
                Offset.inches(moved(A, FOOT, found)),
                Offset.inches(moved(B, FOOT, found)),
                Offset.inches(moved(A, TOP, found)),
                Offset.inches(moved(B, TOP, found)));
    }

    private Force force(String what, double[] found) {
        for (int i = 0; i < ties.size(); i++) if (ties.get(i).what().equals(what)) return Force.pounds(found[i]);
        return Force.ZERO;
    }
}
