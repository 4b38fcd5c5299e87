package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Probe;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.gate.HingePin;

/**
 * A closed leaf on hinges whose post stands still, in one state of its rods: what its loads bring to the pins, how far its free corner drops, how its rods pull,
 * and what becomes of all three when a pin is moved. On a post that gives by {@code C} under the pins' forces, {@code f = f0 + G C f}. Exact, as the frame
 * is linear: the condensed form of {@link GateFrame}. Source: static condensation, any text on structural analysis. Check: LeafDropsTest.
 */
final class PinnedLeaf {
    /** The cases that are solved, by their place in a mix; rods drawn together follow them. */
    static final int DEAD = 0;

    static final int PERSON = 1;
    static final int CORNER = 2;
    static final int FIRST_ROD = 3;

    private static final List<Dof> SHIFTS = List.of(Dof.UX, Dof.UY, Dof.UZ);
    private static final BaseSpring STILL = new BaseSpring.Wall(Double.POSITIVE_INFINITY);

    /** By case: forces on the post at each pin in three directions, then the corner's drop, then each rod's pull. */
    private final double[][] byCase;
    /** The same by movement of a pin. */
    private final double[][] byMove;

    private final int pins3;

    private PinnedLeaf(double[][] byCase, double[][] byMove, int pins3) {
        this.byCase = byCase;
        this.byMove = byMove;
        this.pins3 = pins3;
    }

    /**
     * @param rods ids of all of the leaf's rods
     * @param slack those of them that are taken out
     */
    static PinnedLeaf of(HungGate gate, double personLb, List<String> rods, List<String> slack) {
        GateFrame frame = Loaded.closed(gate, STILL, slack);
        Probe corner = Sags.freeCorner(frame);
        List<LoadCase> cases = new ArrayList<>();
        cases.add(new LoadCase("case 0", frame.leaf.dead()));
        cases.add(new LoadCase("case 1", frame.leaf.person(personLb)));
        cases.add(LoadCase.of(
                "case 2",
                new Load.AtNode(
                        corner.node(), corner.direction(), corner.armIn().cross(corner.direction()))));
        for (String rod : rods) cases.add(new LoadCase("case " + cases.size(), frame.leaf.drawnTogether(rod, 1)));
        int count = cases.size();
        List<HingePin> pins = gate.leaf().pins();
        for (int j = 0; j < 3 * pins.size(); j++)
            cases.add(LoadCase.of(
                    "move " + j, new Load.Settlement(frame.postNodeAt(pins.get(j / 3)), SHIFTS.get(j % 3), 1)));
        FrameSolution solved = frame.solve(cases);
        double[][] byCase = new double[count][];
        for (int i = 0; i < count; i++) byCase[i] = read(frame, solved, "case " + i, corner, rods, slack);
        double[][] byMove = new double[3 * pins.size()][];
        for (int j = 0; j < byMove.length; j++) byMove[j] = read(frame, solved, "move " + j, corner, rods, slack);
        return new PinnedLeaf(byCase, byMove, 3 * pins.size());
    }

    private static double[] read(
            GateFrame frame, FrameSolution solved, String name, Probe corner, List<String> rods, List<String> slack) {
        List<HingePin> pins = frame.gate.leaf().pins();
        double[] all = new double[3 * pins.size() + 1 + rods.size()];
        for (int i = 0; i < pins.size(); i++) {
            Vector force = solved.linkForce(name, pins.get(i).id()).forceLb();
            all[3 * i] = force.x();
            all[3 * i + 1] = force.y();
            all[3 * i + 2] = force.z();
        }
        all[3 * pins.size()] = solved.displacement(name, corner);
        for (int r = 0; r < rods.size(); r++)
            if (!slack.contains(rods.get(r)))
                all[3 * pins.size() + 1 + r] =
                        solved.internalAt(name, rods.get(r) + "/1", 0).nLb();
        return all;
    }

    int cases() {
        return byCase.length;
    }

    /** On a post: forces at the pins, the corner's drop, the rods' pulls. */
    On on(double[][] give, double[] mix) {
        double[] still = new double[byCase[0].length];
        for (int c = 0; c < mix.length; c++)
            if (mix[c] != 0) for (int i = 0; i < still.length; i++) still[i] += mix[c] * byCase[c][i];
        double[][] m = new double[pins3][pins3];
        for (int i = 0; i < pins3; i++) {
            m[i][i] = 1;
            for (int k = 0; k < pins3; k++) {
                double per = byMove[k][i];
                if (per != 0) for (int j = 0; j < pins3; j++) m[i][j] -= per * give[k][j];
            }
        }
        double[] right = new double[pins3];
        System.arraycopy(still, 0, right, 0, pins3);
        double[] forces = Elimination.solve(m, right);
        for (int k = 0; k < pins3; k++) {
            double moved = 0;
            for (int j = 0; j < pins3; j++) moved += give[k][j] * forces[j];
            for (int i = pins3; i < still.length; i++) still[i] += byMove[k][i] * moved;
        }
        return new On(forces, still, pins3);
    }

    /** What a mix of cases comes to on a post. */
    static final class On {
        final double[] forces;
        private final double[] rest;
        private final int pins3;

        private On(double[] forces, double[] rest, int pins3) {
            this.forces = forces;
            this.rest = rest;
            this.pins3 = pins3;
        }

        double dropIn() {
            return rest[pins3];
        }

        double barLb(int rod) {
            return rest[pins3 + 1 + rod];
        }
    }
}
