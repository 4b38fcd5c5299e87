package plumbleaf.engine.sag;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.gate.Fitting;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.RailLoad;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.wind.LeafWind;

/** The loads on a slide leaf's frame: weight where it lies, wind on the face over the opening and on the tubes of the tail, a person on the nose, ice. */
final class SlideActing {
    private static final double SQUARE_INCHES_PER_SQUARE_FOOT = 144;

    /** A pressure that changes along the leaf is laid on in this many even steps along a piece of rail. */
    private static final int STEPS = 8;

    private final SlideFrame frame;
    private final SlideLoads loads;

    SlideActing(SlideFrame frame, SlideLoads loads) {
        this.frame = frame;
        this.loads = loads;
    }

    /** @param fence whether the fence beside its posts pushes them too */
    List<Load> in(Combination combination, WindWay way, LeafState state, boolean fence) {
        List<Load> acting = new ArrayList<>();
        for (Load load : dead()) acting.add(load.times(combination.dead()));
        if (combination.live() > 0) acting.add(person(loads.person().pounds() * combination.live()));
        if (combination.ice() > 0) acting.addAll(ice(combination.ice()));
        double share = combination.wind() * way.outward();
        if (share != 0) {
            acting.addAll(wind(state == LeafState.CLOSED ? loads.shut() : loads.open(), share));
            acting.addAll(onTail(share));
            if (fence) acting.addAll(frame.pushes(share));
        }
        return acting;
    }

    /** Wet weight. */
    List<Load> dead() {
        List<Load> all = weigh(frame.leaf.members().stream().map(Member::weight).toList(), frame.leaf.railLoads(), 1);
        for (Fitting fitting : frame.leaf.fittings())
            all.add(atNearest(
                    Chain.vector(fitting.at()),
                    new Vector(0, 0, -fitting.weight().pounds())));
        return all;
    }

    private List<Load> ice(double share) {
        return loads.ice().isNone()
                ? List.of()
                : weigh(loads.ice().onMembers(), loads.ice().onRails(), share);
    }

    private List<Load> weigh(List<Force> onMembers, List<RailLoad> onRails, double share) {
        List<Load> all = new ArrayList<>();
        for (int i = 0; i < onMembers.size(); i++) {
            Chain chain = frame.chain(frame.leaf.members().get(i).id());
            double perInch = onMembers.get(i).pounds() * share / chain.lengthIn();
            for (Chain.Piece piece : chain.pieces())
                all.add(new Load.Uniform(piece.member(), new Vector(0, 0, -perInch)));
        }
        for (RailLoad load : onRails) {
            double from = load.from().inches();
            double to = load.to().inches();
            Vector perInch = new Vector(0, 0, -load.wet().pounds() * share / (to - from));
            Vector couple = new Vector(0, load.n().inches(), 0).cross(perInch);
            spread(all, frame.chain(load.rail()), from, to, perInch, couple);
        }
        return all;
    }

    /** An even load over a stretch of a rail; what lies beyond its last joint hangs there. */
    private static void spread(List<Load> all, Chain rail, double from, double to, Vector perInch, Vector couple) {
        double first = rail.first().at().x();
        double last = rail.last().at().x();
        beyond(all, rail.first(), from, Math.min(to, first), perInch, couple);
        for (Chain.Piece piece : rail.pieces()) {
            double a = piece.from().at().x();
            double low = Math.max(from, a);
            double high = Math.min(to, piece.to().at().x());
            if (high > low + 1e-9) all.add(new Load.Uniform(piece.member(), perInch, couple, low - a, high - a));
        }
        beyond(all, rail.last(), Math.max(from, last), to, perInch, couple);
    }

    private static void beyond(List<Load> all, Chain.Stop node, double from, double to, Vector perInch, Vector couple) {
        if (!(to > from)) return;
        double length = to - from;
        Vector force = perInch.times(length);
        Vector arm = new Vector((from + to) / 2 - node.at().x(), 0, 0);
        all.add(new Load.AtNode(node.node(), force, arm.cross(force).plus(couple.times(length))));
    }

    /**
     * Wind on the face over the opening, + outward. Both rails share it by the height of its resultant; a slope of the pressure along the leaf puts it off the middle.
     */
    List<Load> wind(LeafWind wind, double factor) {
        List<Load> all = new ArrayList<>();
        double psi = wind.pressure().psf() / SQUARE_INCHES_PER_SQUARE_FOOT * factor;
        double low = frame.bottom().first().at().z();
        double high = frame.top().first().at().z();
        double to = frame.leaf.outline().latchEdge().inches();
        double tall = frame.leaf.outline().face().squareInches()
                / frame.leaf.outline().width().inches();
        double onTop = (wind.height().inches() - low) / (high - low);
        double slope = 12 * wind.offCentre().inches() / (to * to);
        for (int i = 0; i < STEPS; i++) {
            double begin = to * i / STEPS;
            double end = to * (i + 1) / STEPS;
            double here = psi * tall * (1 + slope * ((begin + end) / 2 - to / 2));
            spread(all, frame.bottom(), begin, end, new Vector(0, here * (1 - onTop), 0), Vector.ZERO);
            spread(all, frame.top(), begin, end, new Vector(0, here * onTop, 0), Vector.ZERO);
        }
        return all;
    }

    /** Wind on the tubes of the tail, half at each rail. */
    List<Load> onTail(double factor) {
        List<Load> all = new ArrayList<>();
        double psi = loads.onTail().psf() / SQUARE_INCHES_PER_SQUARE_FOOT * factor;
        double tail = -frame.leaf.outline().hingeEdge().inches();
        double solid = 0;
        for (Member member : frame.leaf.members()) {
            double depth = member.section().depth().inches();
            boolean rail = member.role() == MemberRole.BOTTOM_RAIL || member.role() == MemberRole.TOP_RAIL;
            if (rail) solid += tail * depth;
            else if (member.middle().r().inches() < 0)
                solid += member.cutLength().inches() * depth;
        }
        Vector perInch = new Vector(0, psi * solid / tail / 2, 0);
        spread(all, frame.bottom(), -tail, 0, perInch, Vector.ZERO);
        spread(all, frame.top(), -tail, 0, perInch, Vector.ZERO);
        return all;
    }

    /** A weight on the nose. */
    Load person(double weightLb) {
        Chain.Stop top = frame.nose().last();
        double arm = frame.leaf.outline().latchEdge().inches() - top.at().x();
        Vector force = new Vector(0, 0, -weightLb);
        return new Load.AtNode(top.node(), force, new Vector(arm, 0, 0).cross(force));
    }

    private Load atNearest(Vector at, Vector force) {
        Chain.Stop nearest = frame.nose().first();
        for (Chain chain : frame.chains().values())
            for (Chain.Stop stop : chain.stops())
                if (stop.at().minus(at).length() < nearest.at().minus(at).length()) nearest = stop;
        return new Load.AtNode(nearest.node(), force, at.minus(nearest.at()).cross(force));
    }
}
