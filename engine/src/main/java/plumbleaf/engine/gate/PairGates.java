package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/** Works out a pair: two leaves from two posts, and how they meet. Leaf a is the left one from outside. */
final class PairGates {
    private PairGates() {}

    static GatePlan plan(GateAsk ask, Opening opening, GateKind.Pair kind, Cures cures) {
        Gate gate = ask.gate();
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            Optional<String> trouble =
                    LeafLayout.troubleOfPair(ask, opening, new Hand(side, SwingWay.IN), share(kind, side));
            if (trouble.isPresent()) return Gates.cannotBeMade(ask, opening, trouble.get());
        }
        List<Hand> asked = new ArrayList<>();
        List<Gates.Hung> all = new ArrayList<>();
        List<Gates.Hung> shown = List.of();
        for (SwingWay way : kind.swing().value().map(List::of).orElse(List.of(SwingWay.IN, SwingWay.OUT))) {
            List<Gates.Hung> both = new ArrayList<>();
            for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
                Hand hand = new Hand(side, way);
                asked.add(hand);
                both.add(Gates.hung(
                        gate.id() + (side == Side.LEFT ? "a" : "b"),
                        ask,
                        LeafLayout.swingOfPair(ask, opening, hand, kind.opens(), share(kind, side)),
                        cures));
            }
            all.addAll(both);
            if (shown.isEmpty() || tightest(both).compareTo(tightest(shown)) < 0) shown = both;
        }
        List<LeafHang> hangs = new ArrayList<>();
        for (Gates.Hung leaf : shown) {
            Hand hand = leaf.ask().hand();
            double share = share(kind, hand.hinge());
            LeafHang hang = hang(ask, kind, leaf, LeafLayout.gradeOfPair(ask, opening, hand, share));
            hangs.add(hang);
        }
        MeetingPlace meeting = meeting(ask, opening, kind, hangs);
        List<Finding> findings = cures.said() ? said(ask, kind, shown, hangs, meeting, cures) : List.of();
        List<Gates.Hung> worstFirst = new ArrayList<>(shown);
        worstFirst.sort(Gates.WORST_FIRST);
        String sentence = "Seen from outside: a pair, " + gate.id() + "a on the left"
                + kind.swing().value().map(way -> ", swings " + way.key()).orElse(", swing not yet said");
        return Gates.plan(
                        ask,
                        opening,
                        asked,
                        sentence,
                        hangs,
                        Optional.of(meeting),
                        Gates.swings(worstFirst),
                        Gates.swings(all),
                        findings)
                .regraded(Gates.regrades(ask, shown));
    }

    private static List<Finding> said(
            GateAsk ask,
            GateKind.Pair kind,
            List<Gates.Hung> shown,
            List<LeafHang> hangs,
            MeetingPlace meeting,
            Cures cures) {
        List<Finding> findings = new ArrayList<>(Gates.common(ask));
        for (int i = 0; i < shown.size(); i++)
            findings.addAll(Gates.ofLeaf(ask, shown.get(i), hangs.get(i).leaf(), cures));
        List<AsSetFit> fits = Gates.fits(ask);
        for (int i = 0; i < fits.size(); i++)
            findings.addAll(AsSetFindings.ofPair(
                    hangs.get(i).leaf(),
                    fits.get(i),
                    kind.opens(),
                    ask.hungOn(hangs.get(i).leaf().hand())));
        findings.add(GateFindings.meeting(ask.gate(), meeting.topMiss().inches(), ask.display()));
        findings.add(PairFindings.order(ask, kind, shown));
        findings.addAll(PairFindings.rhythm(ask, hangs));
        if (!kind.swing().isSaid()) findings.add(GateFindings.hand(ask.gate(), true, false));
        return findings;
    }

    /** Drawn out: the leaf that opens first has the latch, the other one the stop strip and the rod; with two rods each has its own. */
    private static LeafHang hang(GateAsk ask, GateKind.Pair kind, Gates.Hung hung, Slope grade) {
        SwingAsk swing = hung.ask();
        Hand hand = swing.hand();
        Outline outline = swing.outline();
        PlanPoint meets = LeafLayout.meeting(ask.gate().leaf(), swing.opening(), hand, share(kind, hand.hinge()));
        GateAsk own = ask.hungOn(hand);
        Offset latchZ = Gates.latchZ(own, swing, meets);
        double edge = outline.latchEdge().inches();
        double height = outline.topIn(edge) - outline.bottomIn(edge);
        boolean opensFirst = hand.hinge() == kind.active();
        List<Fitting> fittings = new ArrayList<>();
        if (opensFirst)
            fittings.add(new Fitting(
                    "latch",
                    Place.at(edge, 0, latchZ.inches()),
                    ask.parts().latch().weight()));
        if (!opensFirst && kind.meeting().hasStrip())
            fittings.add(new Fitting(
                    "stop strip",
                    Place.at(edge, 0, outline.bottomIn(edge) + height / 2),
                    StopStrip.weight(kind.meeting().strip(), Length.inches(height))));
        if (!opensFirst || kind.meeting().rods() == 2)
            fittings.add(
                    new Fitting("drop rod", Place.at(edge, 0, outline.bottomIn(edge) + height / 4), ask.rodWeight()));
        Leaf leaf = LeafMaker.make(
                hung.part(),
                hand,
                outline,
                swing.parts(),
                ask.gate().leaf().midRails(),
                ask.gate().leaf().midRailsAt(),
                ask.gate().hinges(),
                latchZ,
                fittings);
        return new LeafHang(leaf, grade, Offset.inches(Gates.elevationAtPin(own, swing.opening(), hand)), hung.swing());
    }

    private static double share(GateKind.Pair kind, Side side) {
        return side == Side.LEFT ? kind.split() : 1 - kind.split();
    }

    private static Offset tightest(List<Gates.Hung> leaves) {
        Offset least = leaves.get(0).swing().running().clear();
        for (Gates.Hung leaf : leaves) {
            Offset clear = leaf.swing().running().clear();
            if (clear.compareTo(least) < 0) least = clear;
        }
        return least;
    }

    private static MeetingPlace meeting(GateAsk ask, Opening opening, GateKind.Pair kind, List<LeafHang> hangs) {
        Hand left = hangs.get(0).leaf().hand();
        PlanPoint at = LeafLayout.meeting(ask.gate().leaf(), opening, left, kind.split());
        Offset ground = ask.ground().elevation(at);
        double halfGap = ask.gate().leaf().latchGap().inches() / 2;
        List<Offset> tops = new ArrayList<>();
        List<Offset> frames = new ArrayList<>();
        for (LeafHang hang : hangs) {
            Outline outline = hang.leaf().outline();
            double edge = outline.latchEdge().inches();
            double pin = hang.pinElevation().inches();
            tops.add(Offset.inches(pin + outline.topIn(edge + halfGap)));
            frames.add(Offset.inches(pin + outline.bottomIn(edge) - ground.inches()));
        }
        double miss = Math.abs(tops.get(0).inches() - tops.get(1).inches());
        return new MeetingPlace(
                at, ground, frames.get(0), frames.get(1), ask.gate().leaf().infillBelowFrame(), Offset.inches(miss));
    }
}
