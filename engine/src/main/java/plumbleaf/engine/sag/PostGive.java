package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.FrameModel;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Frames;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.Probe;
import plumbleaf.engine.frame.Support;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.gate.HingePin;
import plumbleaf.engine.quantity.Offset;

/**
 * How far a hinge post gives at its hinge pins under a pound on each of them, in the gate's axes: the post bent on a foot that does not move, and what its
 * foot adds by turning and shifting, {@code C = B + W F W'}, F the flexibility of the foot and W the wrench that each pin's pound brings to it. Solved once for a
 * post; a footing then costs a few products. Source: force method, any text on structural analysis. Check: LeafDropsTest, against the whole frame.
 */
public final class PostGive {
    private static final int ALONG = 0;
    private static final int ACROSS = 1;
    private static final int DOWN = 2;
    private static final int DIRECTIONS = 6;
    private static final String FOOT = "foot";
    private static final List<Vector> AXES = List.of(Vector.X, Vector.Y, Vector.Z);

    private final double[][] bending;
    private final double[][] wrenches;
    private final double lastingBend;

    private PostGive(double[][] bending, double[][] wrenches, double lastingBend) {
        this.bending = bending;
        this.wrenches = wrenches;
        this.lastingBend = lastingBend;
    }

    /** The post's own share of a movement: what it bends under these forces, by the forces of a pound there. */
    private double bendShare(double[] forces, double[] unitForces) {
        double sum = 0;
        for (int i = 0; i < bending.length; i++)
            for (int j = 0; j < bending.length; j++) sum += unitForces[i] * bending[i][j] * forces[j];
        return sum;
    }

    /** Of a gate's hinge post; its leaf only says where the pins are. */
    public static PostGive of(HungGate gate) {
        List<HingePin> pins = gate.leaf().pins();
        double axisIn = -gate.pinToPostAxis().inches();
        double behindIn = -gate.pinAcross().inches();
        List<Node> nodes = new ArrayList<>(List.of(new Node(FOOT, axisIn, behindIn, 0)));
        List<Member> members = new ArrayList<>();
        String below = FOOT;
        for (HingePin pin : pins) {
            nodes.add(new Node(pin.id(), axisIn, behindIn, pin.z().inches()));
            members.add(
                    Member.fixed("to " + pin.id(), below, pin.id(), LeafFrame.stiffness(gate.hingePost()), Vector.X));
            below = pin.id();
        }
        Vector arm = new Vector(-axisIn, -behindIn, 0);
        List<LoadCase> cases = new ArrayList<>();
        double[][] wrenches = new double[3 * pins.size()][DIRECTIONS];
        for (int i = 0; i < 3 * pins.size(); i++) {
            Vector force = AXES.get(i % 3);
            HingePin pin = pins.get(i / 3);
            cases.add(LoadCase.of("pound " + i, new Load.AtNode(pin.id(), force, arm.cross(force))));
            Vector moment = new Vector(arm.x(), arm.y(), pin.z().inches()).cross(force);
            wrenches[i] = new double[] {force.x(), force.y(), force.z(), moment.x(), moment.y(), moment.z()};
        }
        FrameModel post = FrameModel.of(nodes, members, List.of(new Support(FOOT, List.of(Dof.values()))));
        FrameSolution solved = Frames.solve(post, cases);
        double[][] bending = new double[wrenches.length][wrenches.length];
        for (int i = 0; i < wrenches.length; i++)
            for (int j = 0; j < wrenches.length; j++)
                bending[i][j] = solved.displacement(
                        "pound " + j, Probe.shiftAt(pins.get(i / 3).id(), arm, AXES.get(i % 3)));
        return new PostGive(bending, wrenches, gate.hingePost().lastingBend());
    }

    /** A post in its foot: what a search works out once and puts every leaf on. */
    public static final class Standing {
        private final PostGive post;
        private final BaseSpring foot;
        private final double[][] give;

        private Standing(PostGive post, BaseSpring foot, double[][] give) {
            this.post = post;
            this.foot = foot;
            this.give = give;
        }

        /** Movement of every pin, three directions each, under a pound at every pin. Only read. */
        double[][] give() {
            return give;
        }

        double footShare(double[] forces, double[] unitForces) {
            return post.footShare(foot, forces, unitForces);
        }

        /** What the post itself creeps, of a movement. */
        double creepIn(double[] forces, double[] unitForces) {
            return post.lastingBend == 1
                    ? 0
                    : Sags.creepIn(post.lastingBend, Offset.inches(post.bendShare(forces, unitForces)));
        }
    }

    public Standing in(BaseSpring foot) {
        return new Standing(this, foot, on(foot));
    }

    /** Movement of every pin, three directions each, under a pound at every pin, on this foot. */
    double[][] on(BaseSpring foot) {
        double[][] give = footGive(foot);
        int n = bending.length;
        double[][] all = new double[n][n];
        for (int j = 0; j < n; j++) {
            double[] moved = times(give, wrenches[j]);
            for (int i = 0; i < n; i++) {
                all[i][j] = bending[i][j];
                for (int d = 0; d < DIRECTIONS; d++) all[i][j] += wrenches[i][d] * moved[d];
            }
        }
        return all;
    }

    /** The footing's share of a movement: the wrench of a pound there, by what the foot gives under the wrench of these forces. */
    private double footShare(BaseSpring foot, double[] forces, double[] unitForces) {
        double[] moved = times(footGive(foot), wrench(forces));
        double[] unit = wrench(unitForces);
        double sum = 0;
        for (int d = 0; d < DIRECTIONS; d++) sum += unit[d] * moved[d];
        return sum;
    }

    private double[] wrench(double[] forces) {
        double[] sum = new double[DIRECTIONS];
        for (int i = 0; i < forces.length; i++)
            for (int d = 0; d < DIRECTIONS; d++) sum[d] += forces[i] * wrenches[i][d];
        return sum;
    }

    private static double[] times(double[][] m, double[] v) {
        double[] product = new double[v.length];
        for (int i = 0; i < v.length; i++) for (int j = 0; j < v.length; j++) product[i] += m[i][j] * v[j];
        return product;
    }

    /** The foot's matrix turned round, directions as {@link Dof} has them. */
    private static double[][] footGive(BaseSpring foot) {
        return foot.match(
                pier -> footGive(pier, pier, 0, 0),
                planes -> footGive(
                        planes.along(),
                        planes.across(),
                        give(planes.sinkingLbPerIn().orElse(0)),
                        give(planes.twistingLbInPerRad().orElse(0))),
                wall -> {
                    throw new IllegalArgumentException("Hinges on a wall have no post");
                });
    }

    /** What is given no stiffness of its own does not move. */
    private static double give(double stiffness) {
        return stiffness == 0 ? 0 : 1 / stiffness;
    }

    private static double[][] footGive(PierSpring along, PierSpring across, double sinking, double twisting) {
        double[][] give = new double[DIRECTIONS][DIRECTIONS];
        double inRun = determinant(along);
        give[ALONG][ALONG] = along.rotationalLbIn() / inRun;
        give[4][4] = along.lateralLbPerIn() / inRun;
        give[ALONG][4] = -along.couplingLb() / inRun;
        give[4][ALONG] = give[ALONG][4];
        double acrossRun = determinant(across);
        give[ACROSS][ACROSS] = across.rotationalLbIn() / acrossRun;
        give[3][3] = across.lateralLbPerIn() / acrossRun;
        give[ACROSS][3] = across.couplingLb() / acrossRun;
        give[3][ACROSS] = give[ACROSS][3];
        give[DOWN][DOWN] = sinking;
        give[5][5] = twisting;
        return give;
    }

    private static double determinant(PierSpring pier) {
        return pier.lateralLbPerIn() * pier.rotationalLbIn() - pier.couplingLb() * pier.couplingLb();
    }
}
