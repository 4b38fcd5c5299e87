package plumbleaf.engine.frame;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import plumbleaf.engine.quantity.DecimalText;

/**
 * The workings of one member: its twelve by twelve stiffness, releases condensed out, rigid arms and axes; the end forces that hold it
 * under its own loads; forces and movement anywhere along it.
 *
 * <p>Order of twelve: start ux uy uz rx ry rz, then the end's. Local stiffness of the Euler-Bernoulli beam as in McGuire, Gallagher,
 * Ziemian, Matrix Structural Analysis, 2nd ed., chapter 4 (from memory). Checks: FrameExamplesCheck and its neighbours.
 */
final class Element {
    /** A release whose own stiffness has sunk to this share of the beam's was released already by others. */
    private static final double LOST = 1e-12;

    /** Places nearer than this share of the length are the same place: a tenth of a thousandth of an inch on a gate. */
    private static final double SAME_PLACE = 1e-12;

    final Member member;
    final double lengthIn;
    private final Vector beginsAt;
    private final Vector ex;
    private final Vector ey;
    private final Vector ez;
    private final int[] released;
    private final double[][] condensed;
    /** Per release, the row of stiffness it was condensed with. */
    private final List<double[]> releaseRows = new ArrayList<>();

    private final double[][] transform;
    final int startNode;
    final int endNode;

    /** @param startNode place of its start among the model's nodes */
    Element(Member member, int startNode, int endNode, Vector startPlace, Vector endPlace) {
        this.member = member;
        this.startNode = startNode;
        this.endNode = endNode;
        this.beginsAt = startPlace.plus(member.startOffsetIn());
        Vector axis = endPlace.plus(member.endOffsetIn()).minus(beginsAt);
        this.lengthIn = axis.length();
        if (!(lengthIn > 0)) throw new IllegalArgumentException("Member " + member.id() + " has no length");
        this.ex = axis.unit();
        Vector across = member.orientation().minus(ex.times(ex.dot(member.orientation())));
        if (!(across.length() > 1e-9 * member.orientation().length()))
            throw new IllegalArgumentException("Member " + member.id() + ": orientation "
                    + member.orientation().text() + " lies along the member");
        this.ey = across.unit();
        this.ez = ex.cross(ey);
        this.released = released(member);
        this.condensed = condensed();
        this.transform = transform();
    }

    Vector axis(int i) {
        return i == 0 ? ex : i == 1 ? ey : ez;
    }

    Vector placeAt(double atIn) {
        return beginsAt.plus(ex.times(atIn));
    }

    Vector toLocal(Vector global) {
        return new Vector(ex.dot(global), ey.dot(global), ez.dot(global));
    }

    Vector toGlobal(Vector local) {
        return ex.times(local.x()).plus(ey.times(local.y())).plus(ez.times(local.z()));
    }

    /** Stiffness on the twelve directions of the two nodes. Most entries of the transform are zero, and are passed over. */
    double[][] nodeStiffness() {
        double[][] half = new double[12][12];
        double[][] full = new double[12][12];
        for (int k = 0; k < 12; k++)
            for (int j = 0; j < 12; j++) {
                if (transform[k][j] == 0) continue;
                for (int i = 0; i < 12; i++) half[i][j] += condensed[i][k] * transform[k][j];
            }
        for (int k = 0; k < 12; k++)
            for (int i = 0; i < 12; i++) {
                if (transform[k][i] == 0) continue;
                for (int j = 0; j < 12; j++) full[i][j] += transform[k][i] * half[k][j];
            }
        return full;
    }

    /** End forces while both nodes stand still, in the member's axes: uniform loads by Simpson's rule, exact for shapes of third degree. */
    double[] heldEndForces(MemberLoads loads) {
        double[] held = uncondensedEndForces(loads);
        for (int r = 0; r < released.length; r++) {
            double[] row = releaseRows.get(r);
            double share = held[released[r]] / row[released[r]];
            for (int i = 0; i < 12; i++) held[i] -= row[i] * share;
            held[released[r]] = 0;
        }
        return held;
    }

    private double[] uncondensedEndForces(MemberLoads loads) {
        double[] held = new double[12];
        for (MemberLoads.Spread spread : loads.spreads()) {
            double run = spread.toIn() - spread.fromIn();
            double middle = (spread.fromIn() + spread.toIn()) / 2;
            hold(
                    held,
                    spread.fromIn(),
                    spread.perInchLb().times(run / 6),
                    spread.couplePerInchLb().times(run / 6));
            hold(
                    held,
                    middle,
                    spread.perInchLb().times(run * 4 / 6),
                    spread.couplePerInchLb().times(run * 4 / 6));
            hold(
                    held,
                    spread.toIn(),
                    spread.perInchLb().times(run / 6),
                    spread.couplePerInchLb().times(run / 6));
        }
        for (MemberLoads.Point point : loads.points()) hold(held, point.atIn(), point.forceLb(), point.momentLbIn());
        return held;
    }

    private void hold(double[] held, double atIn, Vector force, Vector couple) {
        double s = atIn / lengthIn;
        double v1 = 1 - 3 * s * s + 2 * s * s * s;
        double t1 = lengthIn * (s - 2 * s * s + s * s * s);
        double v2 = 3 * s * s - 2 * s * s * s;
        double t2 = lengthIn * (s * s * s - s * s);
        double v1Slope = (6 * s * s - 6 * s) / lengthIn;
        double t1Slope = 1 - 4 * s + 3 * s * s;
        double v2Slope = -v1Slope;
        double t2Slope = 3 * s * s - 2 * s;
        held[0] -= force.x() * (1 - s);
        held[6] -= force.x() * s;
        held[3] -= couple.x() * (1 - s);
        held[9] -= couple.x() * s;
        held[1] -= force.y() * v1 + couple.z() * v1Slope;
        held[5] -= force.y() * t1 + couple.z() * t1Slope;
        held[7] -= force.y() * v2 + couple.z() * v2Slope;
        held[11] -= force.y() * t2 + couple.z() * t2Slope;
        held[2] -= force.z() * v1 - couple.y() * v1Slope;
        held[4] -= couple.y() * t1Slope - force.z() * t1;
        held[8] -= force.z() * v2 - couple.y() * v2Slope;
        held[10] -= couple.y() * t2Slope - force.z() * t2;
    }

    /** Movement of the twelve local directions when the nodes move so. */
    double[] localMovement(double[] nodes) {
        double[] local = new double[12];
        for (int i = 0; i < 12; i++) for (int j = 0; j < 12; j++) local[i] += transform[i][j] * nodes[j];
        return local;
    }

    /** End forces in the member's axes. */
    double[] endForces(double[] localMovement, double[] held) {
        double[] forces = held.clone();
        for (int i = 0; i < 12; i++) for (int j = 0; j < 12; j++) forces[i] += condensed[i][j] * localMovement[j];
        return forces;
    }

    /** The movement of the member's own ends: that of the nodes, save in released directions, which follow the member. */
    double[] ownMovement(double[] localMovement, MemberLoads loads) {
        double[] own = localMovement.clone();
        if (released.length == 0) return own;
        double[] held = uncondensedEndForces(loads);
        double[] shares = new double[released.length];
        for (int r = 0; r < released.length; r++) {
            double[] row = releaseRows.get(r);
            shares[r] = held[released[r]];
            double factor = held[released[r]] / row[released[r]];
            for (int i = 0; i < 12; i++) held[i] -= row[i] * factor;
        }
        for (int r = released.length - 1; r >= 0; r--) {
            double[] row = releaseRows.get(r);
            double sum = shares[r];
            for (int i = 0; i < 12; i++) if (i != released[r] && row[i] != 0) sum += row[i] * own[i];
            own[released[r]] = -sum / row[released[r]];
        }
        return own;
    }

    /** Forces on the two nodes from the end forces, in global axes. */
    double[] nodeForces(double[] endForces) {
        double[] nodes = new double[12];
        for (int i = 0; i < 12; i++) for (int j = 0; j < 12; j++) nodes[j] += transform[i][j] * endForces[i];
        return nodes;
    }

    /**
     * Internal forces at a section, from the start's end forces and the loads before it; at a concentrated load, those just before it.
     * See {@link Internal} for signs.
     */
    Internal internalAt(double atIn, double[] endForces, MemberLoads loads, boolean after) {
        ForcesBefore cut = new ForcesBefore(atIn, endForces);
        for (MemberLoads.Spread spread : loads.spreads()) {
            double to = Math.min(spread.toIn(), atIn);
            if (to > spread.fromIn()) cut.add(spread, to);
        }
        for (MemberLoads.Point point : loads.points())
            if (after ? point.atIn() <= atIn : point.atIn() < atIn) cut.add(point);
        return cut.internal();
    }

    /** Where the run of internal forces may break, with both ends. */
    double[] breaks(MemberLoads loads) {
        double[] places =
                new double[2 + 2 * loads.spreads().size() + loads.points().size()];
        int count = 1;
        places[count++] = lengthIn;
        for (MemberLoads.Spread spread : loads.spreads()) {
            places[count++] = spread.fromIn();
            places[count++] = spread.toIn();
        }
        for (MemberLoads.Point point : loads.points()) places[count++] = point.atIn();
        Arrays.sort(places);
        int apart = 1;
        for (double place : places) if (place - places[apart - 1] > SAME_PLACE * lengthIn) places[apart++] = place;
        places[apart - 1] = lengthIn;
        return Arrays.copyOf(places, apart);
    }

    private double[][] condensed() {
        double[][] k = beam();
        double[] whole = new double[12];
        for (int i = 0; i < 12; i++) whole[i] = k[i][i];
        for (int dof : released) {
            double pivot = k[dof][dof];
            if (!(pivot > LOST * whole[dof]))
                throw new UnstableFrame("Member " + member.id() + " is free to move by its own releases, "
                        + freedom(dof) + " in its own axes: hold one of its ends that way");
            double[] row = k[dof].clone();
            releaseRows.add(row);
            for (int i = 0; i < 12; i++) for (int j = 0; j < 12; j++) k[i][j] -= row[i] * row[j] / pivot;
            for (int i = 0; i < 12; i++) {
                k[dof][i] = 0;
                k[i][dof] = 0;
            }
        }
        return k;
    }

    private static String freedom(int dof) {
        return Dof.at(dof % 6).words();
    }

    private double[][] beam() {
        Stiffness s = member.stiffness();
        double[][] k = new double[12][12];
        double length2 = lengthIn * lengthIn;
        spread(k, 0, 6, s.ePsi() * s.areaIn2() / lengthIn);
        spread(k, 3, 9, s.gPsi() * s.jIn4() / lengthIn);
        bend(k, 1, 5, 7, 11, s.ePsi() * s.izIn4() / lengthIn, length2, 1);
        bend(k, 2, 4, 8, 10, s.ePsi() * s.iyIn4() / lengthIn, length2, -1);
        return k;
    }

    private static void spread(double[][] k, int a, int b, double value) {
        k[a][a] = value;
        k[b][b] = value;
        k[a][b] = -value;
        k[b][a] = -value;
    }

    private void bend(double[][] k, int v1, int t1, int v2, int t2, double ei, double length2, int sign) {
        double shear = 12 * ei / length2;
        double coupling = sign * 6 * ei / lengthIn;
        spread(k, v1, v2, shear);
        k[t1][t1] = 4 * ei;
        k[t2][t2] = 4 * ei;
        both(k, t1, t2, 2 * ei);
        both(k, v1, t1, coupling);
        both(k, v1, t2, coupling);
        both(k, v2, t1, -coupling);
        both(k, v2, t2, -coupling);
    }

    private static void both(double[][] k, int i, int j, double value) {
        k[i][j] = value;
        k[j][i] = value;
    }

    private double[][] transform() {
        double[][] t = new double[12][12];
        for (int end = 0; end < 2; end++) {
            Vector offset = end == 0 ? member.startOffsetIn() : member.endOffsetIn();
            int base = 6 * end;
            for (int i = 0; i < 3; i++) {
                Vector axis = axis(i);
                Vector turned = offset.cross(axis);
                set(t[base + i], base, axis);
                set(t[base + i], base + 3, turned);
                set(t[base + 3 + i], base + 3, axis);
            }
        }
        return t;
    }

    private static void set(double[] row, int at, Vector value) {
        row[at] = value.x();
        row[at + 1] = value.y();
        row[at + 2] = value.z();
    }

    private static int[] released(Member member) {
        TreeSet<Integer> all = new TreeSet<>();
        for (Dof dof : member.startReleases()) all.add(dof.index());
        for (Dof dof : member.endReleases()) all.add(6 + dof.index());
        int[] released = new int[all.size()];
        int i = 0;
        for (int dof : all) released[i++] = dof;
        return released;
    }

    void mustReach(double atIn) {
        if (!(atIn >= 0 && atIn <= lengthIn * (1 + 1e-9)))
            throw new IllegalArgumentException("Member " + member.id() + " is " + DecimalText.shortest(lengthIn)
                    + " long; there is no place " + DecimalText.shortest(atIn) + " along it");
    }
}
