package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.FrameModel;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Frames;
import plumbleaf.engine.frame.GroundSpring;
import plumbleaf.engine.frame.Link;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.SpringMatrix;
import plumbleaf.engine.frame.Support;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.frame.Wrench;
import plumbleaf.engine.gate.HingePin;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Moment;

/**
 * Leaf, hinges, hinge post and footing as one frame. A hinge is three springs at its pin: it gives sideways both ways as its maker says,
 * carries weight or not, and turns freely, so a free hinge puts no moment about its axis into the post. The pin axis is the origin; it may stand off the middle
 * plane of the leaf and of the post to the swing side. The post stands on the coupled spring of what holds it; hinges on a wall sit on points that do not move.
 */
final class GateFrame {
    static final String FOOTING = "footing";
    private static final String GRADE = "grade";
    private static final String POST = "post/";
    private static final String HOLD = "hold";

    final HungGate gate;
    final LeafFrame leaf;
    private final Turn turn;
    private final boolean hingeLocked;
    private final boolean onWall;
    private final double axisIn;
    private final List<Double> postHeights;
    private final FrameModel model;

    /**
     * @param hingeLocked whether the lowest hinge also keeps the leaf from turning; the hold then is that hinge
     */
    GateFrame(HungGate gate, BaseSpring foot, Angle open, HeldAt heldAt, boolean hingeLocked) {
        this(gate, foot, open, heldAt, hingeLocked, List.of(), 1);
    }

    /**
     * @param slackRods ids of the rods that are taken out
     * @param pieces how many pieces stiles and rails are cut into at least
     */
    GateFrame(
            HungGate gate,
            BaseSpring foot,
            Angle open,
            HeldAt heldAt,
            boolean hingeLocked,
            List<String> slackRods,
            int pieces) {
        this.gate = gate;
        this.turn = Turn.of(gate.leaf().hand(), open);
        this.leaf = new LeafFrame(gate.leaf(), turn, heldAt, gate.pinAcross(), slackRods, pieces);
        this.hingeLocked = hingeLocked;
        this.onWall = foot.match(pier -> false, planes -> false, wall -> true);
        this.axisIn = -gate.pinToPostAxis().inches();
        TreeSet<Double> heights = new TreeSet<>();
        heights.add(0.0);
        for (HingePin pin : gate.leaf().pins()) heights.add(pin.z().inches());
        heights.add(Math.max(gate.hingePostHeight().inches(), heights.last()));
        this.postHeights = List.copyOf(heights);
        this.model = model(foot);
    }

    FrameModel model() {
        return model;
    }

    FrameSolution solve(List<LoadCase> cases) {
        return Frames.solve(model, cases);
    }

    /** Push of the fence on the hinge post, in the gate's axes. */
    List<Load> pushes(List<PostPush> pushes, double factor) {
        List<Load> loads = new ArrayList<>();
        for (PostPush push : pushes) {
            double top = postHeights.get(postHeights.size() - 1);
            Vector force = new Vector(0, push.outward().pounds() * factor, 0);
            double over = push.height().inches() - top;
            if (over >= 0) {
                loads.add(
                        new Load.AtNode(postNode(postHeights.size() - 1), force, new Vector(0, 0, over).cross(force)));
                continue;
            }
            int below = 0;
            while (postHeights.get(below + 1) <= push.height().inches()) below++;
            loads.add(new Load.AtPoint(POST + (below + 1), push.height().inches() - postHeights.get(below), force));
        }
        return loads;
    }

    HingeForce hinge(FrameSolution solved, String loadCase, HingePin pin) {
        Vector onPost = solved.linkForce(loadCase, pin.id()).forceLb();
        return new HingeForce(
                pin.id(), pin.z(), Force.pounds(onPost.x()), Force.pounds(onPost.y()), Force.pounds(-onPost.z()));
    }

    List<HingeForce> hinges(FrameSolution solved, String loadCase) {
        return gate.leaf().pins().stream()
                .map(pin -> hinge(solved, loadCase, pin))
                .toList();
    }

    /** What the hinge post brings to its footing; nothing where the hinges are on a wall. */
    BaseAction hingePost(FrameSolution solved, String loadCase) {
        if (onWall) return BaseAction.NONE;
        Wrench ground = solved.groundForce(loadCase, FOOTING);
        Wrench held = solved.reaction(loadCase, GRADE);
        int swing = Turn.swingSign(gate.leaf().hand());
        return new BaseAction(
                Force.pounds(held.forceLb().z() + ground.forceLb().z()),
                Force.pounds(-ground.forceLb().x()),
                Force.pounds(-ground.forceLb().y()),
                Moment.poundInches(-ground.momentLbIn().y()),
                Moment.poundInches(ground.momentLbIn().x()),
                Moment.poundInches(
                        -swing * (held.momentLbIn().z() + ground.momentLbIn().z())));
    }

    /** What keeps the leaf from swinging, + towards its outer face; for a locking hinge nothing, its couple goes through the pin. */
    double holdLb(FrameSolution solved, String loadCase) {
        return hingeLocked ? 0 : solved.groundForce(loadCase, HOLD).forceLb().dot(leaf.normal());
    }

    /** Turn of the post at grade, + towards the latch. */
    double footingTurnRad(FrameSolution solved, String loadCase) {
        return solved.motion(loadCase, GRADE).turnRad().y();
    }

    static boolean isPost(String part) {
        return part.startsWith(POST);
    }

    boolean isHinge(String part) {
        return gate.leaf().pins().stream().anyMatch(pin -> pin.id().equals(part));
    }

    /** The frame's members of the post, from grade up, with the heights they begin at. */
    List<String> postPieces() {
        List<String> pieces = new ArrayList<>();
        for (int i = 1; i < postHeights.size(); i++) pieces.add(POST + i);
        return pieces;
    }

    /** The node of the post at a pin's height. */
    String postNodeAt(HingePin pin) {
        return postNode(postHeights.indexOf(pin.z().inches()));
    }

    double postHeightIn(int node) {
        return postHeights.get(node);
    }

    double axisIn() {
        return axisIn;
    }

    private FrameModel model(BaseSpring foot) {
        List<Node> nodes = new ArrayList<>();
        List<Member> members = new ArrayList<>();
        for (int i = 0; i < postHeights.size(); i++) {
            nodes.add(new Node(postNode(i), axisIn, -gate.pinAcross().inches(), postHeights.get(i)));
            if (i > 0)
                members.add(Member.fixed(
                        POST + i, postNode(i - 1), postNode(i), LeafFrame.stiffness(gate.hingePost()), Vector.X));
        }
        nodes.addAll(leaf.nodes());
        members.addAll(leaf.members());
        List<Link> links = new ArrayList<>(leaf.links());
        for (HingePin pin : gate.leaf().pins()) links.add(link(pin, foot));
        List<GroundSpring> springs = new ArrayList<>();
        if (!onWall) springs.add(new GroundSpring(FOOTING, GRADE, spring(foot)));
        if (!hingeLocked) springs.add(new GroundSpring(HOLD, leaf.held().node(), along(leaf.normal())));
        return new FrameModel(nodes, members, springs, links, supports(foot));
    }

    /** What nothing lets move: on a wall every place a hinge may sit at, on a footing its sinking and twisting, unless it says how it gives. */
    private List<Support> supports(BaseSpring foot) {
        List<Support> supports = new ArrayList<>();
        if (onWall) {
            for (int i = 0; i < postHeights.size(); i++) supports.add(new Support(postNode(i), List.of(Dof.values())));
            return supports;
        }
        List<Dof> held = rigid(foot);
        if (!held.isEmpty()) supports.add(new Support(GRADE, held));
        return supports;
    }

    /** What the foot of a post does not let move at all. */
    static List<Dof> rigid(BaseSpring foot) {
        return foot.match(
                pier -> List.of(Dof.UZ, Dof.RZ),
                planes -> {
                    List<Dof> rigid = new ArrayList<>();
                    if (planes.sinkingLbPerIn().isEmpty()) rigid.add(Dof.UZ);
                    if (planes.twistingLbInPerRad().isEmpty()) rigid.add(Dof.RZ);
                    return rigid;
                },
                wall -> List.of(Dof.values()));
    }

    /** Hinge and fixing give one after the other. */
    private static double sideways(double hingeLbPerIn, BaseSpring foot) {
        return foot.match(
                pier -> hingeLbPerIn, planes -> hingeLbPerIn, wall -> 1 / (1 / hingeLbPerIn + 1 / wall.lbPerIn()));
    }

    private Link link(HingePin pin, BaseSpring foot) {
        double sideways = sideways(gate.hinge().stiffnessLbPerIn(), foot);
        boolean locks = hingeLocked && pin.id().equals(gate.leaf().pins().get(0).id());
        return new Link(
                pin.id(),
                postNodeAt(pin),
                leaf.pin(pin).node(),
                new Vector(0, 0, pin.z().inches()),
                leaf.away(),
                leaf.normal(),
                sideways,
                sideways,
                pin.carriesWeight() ? Link.RIGID_LB_PER_IN : 0,
                0,
                0,
                locks ? Link.RIGID_LB_IN_PER_RAD : 0);
    }

    private static String postNode(int i) {
        return i == 0 ? GRADE : "post at " + i;
    }

    static SpringMatrix spring(BaseSpring foot) {
        return foot.match(
                pier -> spring(pier, pier, 0, 0),
                planes -> spring(
                        planes.along(),
                        planes.across(),
                        planes.sinkingLbPerIn().orElse(0),
                        planes.twistingLbInPerRad().orElse(0)),
                wall -> SpringMatrix.NONE);
    }

    /** The foot's matrix in both planes; the coupling changes sign between them. */
    private static SpringMatrix spring(PierSpring along, PierSpring across, double sinking, double twisting) {
        return SpringMatrix.diagonal(
                        along.lateralLbPerIn(),
                        across.lateralLbPerIn(),
                        sinking,
                        across.rotationalLbIn(),
                        along.rotationalLbIn(),
                        twisting)
                .with(Dof.UX, Dof.RY, along.couplingLb())
                .with(Dof.UY, Dof.RX, -across.couplingLb());
    }

    /** Rigid along one direction. */
    private static SpringMatrix along(Vector direction) {
        double k = Link.RIGID_LB_PER_IN;
        return SpringMatrix.NONE
                .with(Dof.UX, Dof.UX, k * direction.x() * direction.x())
                .with(Dof.UY, Dof.UY, k * direction.y() * direction.y())
                .with(Dof.UX, Dof.UY, k * direction.x() * direction.y());
    }
}
