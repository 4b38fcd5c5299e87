package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.frame.FrameModel;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.GroundSpring;
import plumbleaf.engine.frame.Link;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.Support;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.frame.Wrench;
import plumbleaf.engine.gate.FrameJoint;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Moment;

/**
 * A slide leaf somewhere on its way, its rollers, their posts and footings, and while it is closed its receiver, as one frame in space. x runs from the front rollers'
 * side towards the receiver from the opening's face, y outward from the line of the posts, z up from grade at the face. A wheel holds square to the tube it bears on and
 * lets it roll; every wheel is rigid beside the tubes. The front rollers alone keep the leaf along its way, which loads nothing. The receiver holds the nose across at
 * both tubes and carries none of its weight.
 */
final class SlideFrame {
    private static final String FOOT = " foot";

    /** A contact is not taken nearer to a post's grade than this: there the leaf strikes the ground. */
    private static final double ABOVE_GRADE_IN = 0.5;

    final SlideGate gate;
    final Leaf leaf;
    private final double travelIn;
    private final boolean received;
    private final Map<String, Chain> chains = new LinkedHashMap<>();
    private final Map<String, List<Double>> heights = new LinkedHashMap<>();
    private final List<Node> nodes = new ArrayList<>();
    private final List<Member> members = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<GroundSpring> springs = new ArrayList<>();
    private final List<Support> supports = new ArrayList<>();
    private final FrameModel model;

    /**
     * @param travelIn how far the leaf has moved from its closed place
     * @param received whether its nose stands in the receiver
     * @param soil which of a footing's springs counts
     */
    SlideFrame(SlideGate gate, double travelIn, boolean received, Function<PierSprings, BaseSpring> soil) {
        this.gate = gate;
        this.leaf = gate.plan().leaf();
        this.travelIn = travelIn;
        this.received = received;
        for (plumbleaf.engine.gate.Member member : leaf.members()) chains.put(member.id(), new Chain(member));
        for (FrameJoint joint : leaf.joints())
            for (String member : joint.members()) chain(member).add(joint.id(), Chain.vector(joint.at()));
        rollers("front", gate.front(), soil, true);
        rollers("rear", gate.rear(), soil, false);
        if (received) receiver(soil);
        Set<String> built = new LinkedHashSet<>();
        for (Chain chain : chains.values()) build(chain, built);
        this.model = new FrameModel(nodes, members, springs, links, supports);
    }

    FrameModel model() {
        return model;
    }

    Chain chain(String member) {
        return Objects.requireNonNull(chains.get(member), member);
    }

    private Chain only(MemberRole role) {
        return chain(leaf.of(role).get(0).id());
    }

    Chain bottom() {
        return only(MemberRole.BOTTOM_RAIL);
    }

    Chain top() {
        return only(MemberRole.TOP_RAIL);
    }

    Chain nose() {
        return only(MemberRole.NOSE_UPRIGHT);
    }

    Chain tail() {
        return only(MemberRole.TAIL_UPRIGHT);
    }

    Map<String, Chain> chains() {
        return chains;
    }

    /** A point of the leaf as it now stands. */
    Vector toGround(Vector onLeaf) {
        return new Vector(
                onLeaf.x() - travelIn, onLeaf.y() + gate.plan().shape().across().inches(), onLeaf.z());
    }

    /** Whether the weight of the leaf lifts it off the wheels of a post where it now stands: the lever about the other. */
    boolean lifts(boolean atFront) {
        double centre = leaf.weight().centreOfGravity().r().inches() - travelIn;
        double front = gate.front().at().inches();
        double rear = gate.rear().at().inches();
        return atFront ? centre < rear : centre > front;
    }

    private void rollers(String post, SlidePost at, Function<PierSprings, BaseSpring> soil, boolean keepsAlong) {
        double r = at.at().inches() + travelIn;
        Chain.Stop low = bottom().split(post + " rollers below", bottom().atRadius(r));
        Chain.Stop high = top().split(post + " rollers above", top().atRadius(r));
        stand(post, at, soil, List.of(low.at().z(), high.at().z()));
        boolean onTop = gate.plan().rollers().way().bearsOnTop(lifts(keepsAlong));
        roll(post, at, low, bottom().atRadius(r), !onTop, keepsAlong);
        roll(post, at, high, top().atRadius(r), onTop, keepsAlong);
    }

    private void roll(String post, SlidePost at, Chain.Stop stop, Vector contact, boolean bears, boolean keeps) {
        boolean low = contact.z() < top().first().at().z() - 1e-6;
        links.add(new Link(
                post + (low ? " low" : " high"),
                node(post, at, contact.z()),
                stop.node(),
                toGround(contact),
                Vector.X,
                Vector.Y,
                bears && keeps ? Link.RIGID_LB_PER_IN : 0,
                Link.RIGID_LB_PER_IN,
                bears ? Link.RIGID_LB_PER_IN : 0,
                0,
                0,
                0));
    }

    private void receiver(Function<PierSprings, BaseSpring> soil) {
        SlidePost at = gate.receiver();
        Chain.Stop low = nose().first();
        Chain.Stop high = nose().last();
        stand("receiver", at, soil, List.of(low.at().z(), high.at().z()));
        for (Chain.Stop stop : List.of(low, high))
            links.add(new Link(
                    "receiver" + (stop.equals(low) ? " low" : " high"),
                    node("receiver", at, stop.at().z()),
                    stop.node(),
                    toGround(stop.at()),
                    Vector.X,
                    Vector.Y,
                    0,
                    Link.RIGID_LB_PER_IN,
                    0,
                    0,
                    0,
                    0));
    }

    private void stand(String post, SlidePost at, Function<PierSprings, BaseSpring> soil, List<Double> contacts) {
        double base = at.grade().inches();
        TreeSet<Double> levels = new TreeSet<>();
        levels.add(base);
        for (double z : contacts) levels.add(Math.max(base + ABOVE_GRADE_IN, z));
        levels.add(Math.max(base + at.height().inches(), levels.last()));
        List<Double> at0 = List.copyOf(levels);
        heights.put(post, at0);
        for (int i = 0; i < at0.size(); i++) {
            nodes.add(new Node(post + "/" + i, at.at().inches(), 0, at0.get(i)));
            if (i > 0)
                members.add(Member.fixed(
                        post + "/" + (i - 1) + "-" + i,
                        post + "/" + (i - 1),
                        post + "/" + i,
                        LeafFrame.stiffness(at.stock()),
                        Vector.X));
        }
        BaseSpring foot = soil.apply(at.foot());
        springs.add(new GroundSpring(post + FOOT, post + "/0", GateFrame.spring(foot)));
        if (!GateFrame.rigid(foot).isEmpty()) supports.add(new Support(post + "/0", GateFrame.rigid(foot)));
    }

    private String node(String post, SlidePost at, double z) {
        double wanted = Math.max(at.grade().inches() + ABOVE_GRADE_IN, z);
        List<Double> levels = Objects.requireNonNull(heights.get(post));
        int nearest = 0;
        for (int i = 1; i < levels.size(); i++)
            if (Math.abs(levels.get(i) - wanted) < Math.abs(levels.get(nearest) - wanted)) nearest = i;
        return post + "/" + nearest;
    }

    private void build(Chain chain, Set<String> built) {
        for (Chain.Stop stop : chain.stops())
            if (built.add(stop.node())) nodes.add(Node.at(stop.node(), toGround(stop.at())));
        for (Chain.Piece piece : chain.pieces()) {
            Vector along = piece.to().at().minus(piece.from().at());
            members.add(Member.fixed(
                    piece.member(),
                    piece.from().node(),
                    piece.to().node(),
                    LeafFrame.stiffness(chain.member.section()),
                    Vector.Y.cross(along)));
        }
    }

    /** Push of the fence on the posts while the wind blows out, times a factor. */
    List<Load> pushes(double factor) {
        List<Load> loads = new ArrayList<>(pushes("front", gate.front(), factor));
        loads.addAll(pushes("rear", gate.rear(), factor));
        if (received) loads.addAll(pushes("receiver", gate.receiver(), factor));
        return loads;
    }

    private List<Load> pushes(String post, SlidePost at, double factor) {
        List<Load> loads = new ArrayList<>();
        List<Double> levels = Objects.requireNonNull(heights.get(post));
        for (PostPush push : at.pushes()) {
            double z = at.grade().inches() + push.height().inches();
            Vector force = new Vector(0, push.outward().pounds() * factor, 0);
            int last = levels.size() - 1;
            if (z >= levels.get(last)) {
                Vector arm = new Vector(0, 0, z - levels.get(last));
                loads.add(new Load.AtNode(post + "/" + last, force, arm.cross(force)));
                continue;
            }
            int below = 0;
            while (levels.get(below + 1) <= z) below++;
            loads.add(new Load.AtPoint(post + "/" + below + "-" + (below + 1), z - levels.get(below), force));
        }
        return loads;
    }

    RollerForce onRollers(FrameSolution solved, String loadCase, String post) {
        Vector low = solved.linkForce(loadCase, post + " low").forceLb();
        Vector high = solved.linkForce(loadCase, post + " high").forceLb();
        return new RollerForce(Force.pounds(-low.z() - high.z()), Force.pounds(low.y()), Force.pounds(high.y()));
    }

    double atReceiver(FrameSolution solved, String loadCase, boolean low) {
        return received
                ? solved.linkForce(loadCase, low ? "receiver low" : "receiver high")
                        .forceLb()
                        .y()
                : 0;
    }

    /** What a post brings to its footing. */
    BaseAction atGrade(FrameSolution solved, String loadCase, String post) {
        if (!heights.containsKey(post)) return BaseAction.NONE;
        Wrench ground = solved.groundForce(loadCase, post + FOOT);
        Wrench held = solved.reaction(loadCase, post + "/0");
        Vector force = ground.forceLb().plus(held.forceLb());
        Vector moment = ground.momentLbIn().plus(held.momentLbIn());
        return new BaseAction(
                Force.pounds(force.z()),
                Force.pounds(-force.x()),
                Force.pounds(-force.y()),
                Moment.poundInches(-moment.y()),
                Moment.poundInches(moment.x()),
                Moment.poundInches(-moment.z()));
    }

    static boolean isFoot(String part) {
        return part.endsWith(FOOT);
    }

    static boolean isPost(String part) {
        return !isFoot(part) && (part.startsWith("front/") || part.startsWith("rear/") || part.startsWith("receiver/"));
    }
}
