package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import plumbleaf.engine.frame.Link;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.Stiffness;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.gate.Fitting;
import plumbleaf.engine.gate.FrameJoint;
import plumbleaf.engine.gate.HingePin;
import plumbleaf.engine.gate.IceCoat;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Outline;
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.gate.RailLoad;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.section.PostStock;
import plumbleaf.engine.wind.LeafWind;

/**
 * The leaf's frame on its centrelines: welded corners, or brackets that turn; every brace from corner to corner; infill stiffens nothing. A
 * member's weight is spread over its centreline, cladding over the rails it hangs on; what reaches beyond the last node hangs on that node.
 * A rod is a bar between two corners, or is not there where it is slack; its weight hangs on both corners.
 */
final class LeafFrame {
    private static final Vector NORMAL = Vector.Y;
    private static final double SQUARE_INCHES_PER_SQUARE_FOOT = 144;

    /** A load that changes along a rail is laid on in this many even steps along a piece of rail. */
    private static final int STEPS = 8;

    private final Leaf leaf;
    private final Turn turn;
    private final Vector pinAt;
    private final Map<String, Chain> chains = new LinkedHashMap<>();
    private final List<Node> nodes = new ArrayList<>();
    private final List<Member> members = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<String> slackRods;
    private final Map<String, Chain.Stop> pins = new LinkedHashMap<>();
    private final Chain.Stop latch;
    private final Chain.Stop corner;
    private final Chain.Stop held;

    /**
     * @param pinAcross n of the pin axis, about which the leaf turns
     * @param slackRods ids of the rods that are taken out
     * @param pieces how many pieces stiles and rails are cut into at least, for a mode of vibration; 1 for statics
     */
    LeafFrame(Leaf leaf, Turn turn, HeldAt heldAt, Offset pinAcross, List<String> slackRods, int pieces) {
        this.leaf = leaf;
        this.turn = turn;
        this.pinAt = new Vector(0, pinAcross.inches(), 0);
        this.slackRods = List.copyOf(slackRods);
        for (plumbleaf.engine.gate.Member member : leaf.members()) chains.put(member.id(), new Chain(member));
        for (FrameJoint joint : leaf.joints()) for (String member : joint.members()) join(joint, member);
        Chain hingeStile = chain(leaf.of(MemberRole.HINGE_STILE).get(0).id());
        Chain latchStile = chain(leaf.of(MemberRole.LATCH_STILE).get(0).id());
        Chain bottomRail = chain(leaf.of(MemberRole.BOTTOM_RAIL).get(0).id());
        for (HingePin pin : leaf.pins())
            pins.put(
                    pin.id(),
                    hingeStile.split(
                            "at " + pin.id(),
                            new Vector(hingeStile.first().at().x(), 0, pin.z().inches())));
        this.latch = latchStile.split(
                "at latch",
                new Vector(latchStile.first().at().x(), 0, leaf.latchAt().z().inches()));
        this.corner = latchStile.first();
        this.held = heldAt.match(
                atLatch -> latch,
                atCorner -> corner,
                onRail -> bottomRail.split(
                        "at stop", bottomRail.atRadius(onRail.radius().inches())));
        for (Chain chain : chains.values()) {
            boolean edge = chain.member.role() != MemberRole.BRACE && chain.member.role() != MemberRole.ROD;
            if (edge && pieces > 1) chain.cutInto(pieces);
        }
        for (Chain chain : chains.values()) build(chain);
    }

    /** At a bolted joint every member but the one that runs through and rods has a node of its own, held to the other's by a bracket. */
    private void join(FrameJoint joint, String member) {
        Vector at = Chain.vector(joint.at());
        Chain chain = chain(member);
        boolean through = joint.members().get(0).equals(member);
        if (!leaf.make().isBolted() || through || chain.member.role() == MemberRole.ROD) {
            chain.add(joint.id(), at);
            return;
        }
        String own = joint.id() + " of " + member;
        chain.add(own, at);
        links.add(new Link(
                own + " in its bracket",
                joint.id(),
                own,
                turn.toGate(at),
                turn.toGate(Vector.X),
                turn.toGate(NORMAL),
                Link.RIGID_LB_PER_IN,
                Link.RIGID_LB_PER_IN,
                Link.RIGID_LB_PER_IN,
                Link.RIGID_LB_IN_PER_RAD,
                leaf.make().bracket().stiffnessLbInPerRad(),
                Link.RIGID_LB_IN_PER_RAD));
    }

    /** Brackets of a bolted frame. */
    List<Link> links() {
        return links;
    }

    /** The rods that pull. */
    List<Chain> rods() {
        return chains.values().stream()
                .filter(chain -> chain.member.role() == MemberRole.ROD && !isSlack(chain))
                .toList();
    }

    boolean isSlack(Chain chain) {
        return slackRods.contains(chain.member.id());
    }

    /** A pair of forces that draws a rod's two corners together, by its centreline. */
    List<Load> drawnTogether(String rod, double poundsIn) {
        Chain chain = chain(rod);
        Vector along = chain.last().at().minus(chain.first().at()).unit();
        return List.of(
                new Load.AtNode(chain.first().node(), turn.toGate(along.times(poundsIn)), Vector.ZERO),
                new Load.AtNode(chain.last().node(), turn.toGate(along.times(-poundsIn)), Vector.ZERO));
    }

    List<Node> nodes() {
        return nodes;
    }

    List<Member> members() {
        return members;
    }

    Map<String, Chain> chains() {
        return chains;
    }

    Chain.Stop pin(HingePin pin) {
        return Objects.requireNonNull(pins.get(pin.id()));
    }

    Chain.Stop latch() {
        return latch;
    }

    /** The upper end of the latch stile. */
    Chain.Stop top() {
        return chain(leaf.of(MemberRole.LATCH_STILE).get(0).id()).last();
    }

    Chain.Stop held() {
        return held;
    }

    /** The lower latch joint, which carries the free corner of the outline. */
    Chain.Stop corner() {
        return corner;
    }

    /** The upper latch joint, the corner that leaves the plane most in the wind. */
    Chain.Stop upperCorner() {
        return chain(leaf.of(MemberRole.LATCH_STILE).get(0).id()).last();
    }

    /** From the lower latch joint to the free corner, in the gate's axes. */
    Vector armToFreeCorner() {
        return turn.toGate(Chain.vector(leaf.freeCorner()).minus(corner.at()));
    }

    /** Towards the leaf's outer face, in the gate's axes. */
    Vector normal() {
        return turn.toGate(NORMAL);
    }

    /** Away from the hinges along the leaf. */
    Vector away() {
        return turn.toGate(Vector.X);
    }

    /** Wet weight. */
    List<Load> dead() {
        List<Load> loads = weigh(
                leaf.members().stream()
                        .map(plumbleaf.engine.gate.Member::weight)
                        .toList(),
                leaf.railLoads(),
                1);
        for (Fitting fitting : leaf.fittings())
            loads.add(atNearest(
                    Chain.vector(fitting.at()),
                    new Vector(0, 0, -fitting.weight().pounds())));
        return loads;
    }

    /** A share of the weight of ice. */
    List<Load> ice(IceCoat coat, double share) {
        return coat.isNone() ? List.of() : weigh(coat.onMembers(), coat.onRails(), share);
    }

    /** @param onMembers in the order of the leaf's members */
    private List<Load> weigh(List<Force> onMembers, List<RailLoad> onRails, double share) {
        List<Load> loads = new ArrayList<>();
        for (int i = 0; i < onMembers.size(); i++) {
            Chain chain = chain(leaf.members().get(i).id());
            double weight = onMembers.get(i).pounds() * share;
            if (chain.member.role() == MemberRole.ROD) {
                Vector half = new Vector(0, 0, -weight / 2);
                loads.add(new Load.AtNode(chain.first().node(), half, Vector.ZERO));
                loads.add(new Load.AtNode(chain.last().node(), half, Vector.ZERO));
                continue;
            }
            double perInch = weight / chain.lengthIn();
            for (Chain.Piece piece : chain.pieces())
                loads.add(new Load.Uniform(piece.member(), new Vector(0, 0, -perInch)));
        }
        for (RailLoad load : onRails) {
            double from = load.from().inches();
            double to = load.to().inches();
            Vector perInch = new Vector(0, 0, -load.wet().pounds() * share / (to - from));
            Vector couple = new Vector(0, load.n().inches(), 0).cross(perInch);
            spread(loads, chain(load.rail()), from, to, r -> perInch, r -> couple);
        }
        return loads;
    }

    /** A weight at the latch edge, on the latch stile's top. */
    List<Load> person(double weightLb) {
        Chain stile = chain(leaf.of(MemberRole.LATCH_STILE).get(0).id());
        Vector edge = new Vector(
                leaf.outline().latchEdge().inches(), 0, stile.last().at().z());
        return List.of(onArm(stile.last(), edge, new Vector(0, 0, -weightLb)));
    }

    /**
     * Wind on the whole outline, towards the outer face for a factor above zero. Boards hand it to the rails by half the way to the next
     * one; the outermost two take what puts the resultant at its height, and a slope of the pressure along the leaf what puts it off the
     * middle.
     */
    List<Load> wind(LeafWind wind, double factor) {
        List<Load> loads = new ArrayList<>();
        double psi = wind.pressure().psf() / SQUARE_INCHES_PER_SQUARE_FOOT * factor;
        if (psi == 0) return loads;
        List<Chain> rails = leaf.rails().stream().map(rail -> chain(rail.id())).toList();
        double from = leaf.outline().hingeEdge().inches();
        double to = leaf.outline().latchEdge().inches();
        double middle = (from + to) / 2;
        double slope = 12 * wind.offCentre().inches() / ((to - from) * (to - from));
        double above = wind.height().inches() - middleOfFaceIn();
        for (int i = 0; i < rails.size(); i++) {
            int rail = i;
            spread(
                    loads,
                    rails.get(i),
                    from,
                    to,
                    r -> NORMAL.times(psi * (1 + slope * (r - middle)) * share(rails, rail, r, above)),
                    r -> Vector.ZERO);
        }
        return loads;
    }

    /** Height of the middle of the face above grade at the pin; of a curved one, of the even face with the same area. */
    private double middleOfFaceIn() {
        Outline outline = leaf.outline();
        if (!isShaped())
            return (outline.bottomAtPin().inches() + outline.topAtPin().inches()) / 2;
        double even = outline.face().squareInches() / outline.width().inches();
        return outline.bottomAtPin().inches() - outline.infillBelow().inches() + even / 2;
    }

    /** Whether the infill leaves the frame's outline. */
    private boolean isShaped() {
        return leaf.outline().crest().isCurved()
                || !leaf.outline().crest().step().isZero()
                || !leaf.outline().infillBelow().isZero();
    }

    /** Inches of height that a rail bears at r, when the resultant stands this far above half the height. */
    private double share(List<Chain> rails, int rail, double rIn, double aboveIn) {
        List<Place> corners = leaf.outline().corners();
        double bottom = isShaped() ? leaf.outline().infillBottomIn(rIn) : between(corners.get(0), corners.get(1), rIn);
        double top = isShaped() ? leaf.outline().crestIn(rIn) : between(corners.get(3), corners.get(2), rIn);
        double[] z = new double[rails.size()];
        for (int i = 0; i < z.length; i++) z[i] = rails.get(i).atRadius(rIn).z();
        double moment = (top - bottom) * ((top + bottom) / 2 + aboveIn);
        double mine = 0;
        for (int i = 0; i < z.length; i++) {
            double low = i == 0 ? bottom : (z[i - 1] + z[i]) / 2;
            double high = i == z.length - 1 ? top : (z[i] + z[i + 1]) / 2;
            moment -= (high - low) * z[i];
            if (i == rail) mine = high - low;
        }
        double correction = moment / (z[z.length - 1] - z[0]);
        if (rail == z.length - 1) return mine + correction;
        return rail == 0 ? mine - correction : mine;
    }

    private static double between(Place a, Place b, double rIn) {
        double share = (rIn - a.r().inches()) / (b.r().inches() - a.r().inches());
        return a.z().inches() + share * (b.z().inches() - a.z().inches());
    }

    private interface AtRadius {
        Vector of(double rIn);
    }

    /**
     * A load given per inch of r, on a rail's pieces; what lies beyond its ends goes to the end nodes with its arm. A load that changes along
     * a step keeps its moment by a couple, {@code h^2 / 12} times its slope.
     */
    private void spread(List<Load> loads, Chain rail, double from, double to, AtRadius perInch, AtRadius couple) {
        double first = rail.first().at().x();
        double last = rail.last().at().x();
        beyond(loads, rail, rail.first(), from, Math.min(to, first), perInch, couple);
        for (Chain.Piece piece : rail.pieces()) {
            double a = piece.from().at().x();
            double b = piece.to().at().x();
            double low = Math.max(from, a);
            double high = Math.min(to, b);
            if (!(high > low)) continue;
            double alongPerR = piece.lengthIn() / (b - a);
            Vector along = piece.to().at().minus(piece.from().at()).unit();
            boolean even = perInch.of(low).equals(perInch.of(high))
                    && !leaf.outline().crest().isCurved();
            int steps = even ? 1 : STEPS;
            for (int i = 0; i < steps; i++) {
                double begin = low + (high - low) * i / steps;
                double end = low + (high - low) * (i + 1) / steps;
                double middle = (begin + end) / 2;
                Vector change = perInch.of(end).minus(perInch.of(begin));
                Vector slant = along.cross(change).times((end - begin) * alongPerR / 12);
                loads.add(new Load.Uniform(
                        piece.member(),
                        turn.toGate(perInch.of(middle).times(1 / alongPerR)),
                        turn.toGate(couple.of(middle).plus(slant).times(1 / alongPerR)),
                        (begin - a) * alongPerR,
                        (end - a) * alongPerR));
            }
        }
        beyond(loads, rail, rail.last(), Math.max(from, last), to, perInch, couple);
    }

    private void beyond(
            List<Load> loads, Chain rail, Chain.Stop node, double from, double to, AtRadius perInch, AtRadius couple) {
        if (!(to > from)) return;
        double middle = (from + to) / 2;
        Vector force = perInch.of(middle).times(to - from);
        Vector own = couple.of(middle).times(to - from);
        Vector arm = rail.atRadius(middle).minus(node.at());
        loads.add(new Load.AtNode(
                node.node(), turn.toGate(force), turn.toGate(arm.cross(force).plus(own))));
    }

    private Load atNearest(Vector at, Vector force) {
        Chain.Stop nearest = corner;
        for (Chain chain : chains.values())
            for (Chain.Stop stop : chain.stops())
                if (stop.at().minus(at).length() < nearest.at().minus(at).length()) nearest = stop;
        return onArm(nearest, at, force);
    }

    private Load onArm(Chain.Stop node, Vector at, Vector force) {
        return new Load.AtNode(
                node.node(), turn.toGate(force), turn.toGate(at.minus(node.at()).cross(force)));
    }

    private Chain chain(String member) {
        return Objects.requireNonNull(chains.get(member), member);
    }

    private void build(Chain chain) {
        if (isSlack(chain)) return;
        for (Chain.Stop stop : chain.stops())
            if (nodes.stream().noneMatch(node -> node.id().equals(stop.node())))
                nodes.add(Node.at(stop.node(), turn.toGate(stop.at().minus(pinAt))));
        Stiffness stiffness = stiffness(chain.member.section());
        for (Chain.Piece piece : chain.pieces()) {
            Vector along = piece.to().at().minus(piece.from().at());
            if (chain.member.role() == MemberRole.ROD) {
                members.add(Member.bar(
                        piece.member(),
                        piece.from().node(),
                        piece.to().node(),
                        stiffness,
                        turn.toGate(NORMAL.cross(along))));
                continue;
            }
            members.add(Member.fixed(
                    piece.member(),
                    piece.from().node(),
                    piece.to().node(),
                    stiffness,
                    turn.toGate(NORMAL.cross(along))));
        }
    }

    /** A section whose depth lies along the member's own y. */
    static Stiffness stiffness(PostStock section) {
        return new Stiffness(
                section.elasticModulus().psi(),
                section.shearModulus().psi(),
                section.areaIn2(),
                section.iyIn4(),
                section.ixIn4(),
                section.jIn4());
    }
}
