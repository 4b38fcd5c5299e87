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
import plumbleaf.engine.quantity.Offset;

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
                        LeafLayout.swingOfPair(ask, opening, hand, kind.opens(), share(kind, side))));
            }
            all.addAll(both);
            if (shown.isEmpty() || tightest(both).compareTo(tightest(shown)) < 0) shown = both;
        }
        List<Finding> findings = new ArrayList<>(Gates.common(ask));
        List<LeafHang> hangs = new ArrayList<>();
        for (Gates.Hung leaf : shown) {
            Hand hand = leaf.ask().hand();
            double share = share(kind, hand.hinge());
            PlanPoint meets = LeafLayout.meeting(gate.leaf(), opening, hand, share);
            LeafHang hang =
                    Gates.hang(leaf.part(), ask, leaf, LeafLayout.gradeOfPair(ask, opening, hand, share), meets);
            hangs.add(hang);
            findings.addAll(Gates.ofLeaf(ask, leaf, hang.leaf(), cures));
        }
        List<AsSetFit> fits = Gates.fits(ask);
        for (int i = 0; i < fits.size(); i++)
            findings.addAll(AsSetFindings.ofPair(hangs.get(i).leaf(), fits.get(i), kind.opens(), ask));
        findings.add(meeting(ask, hangs));
        if (!kind.swing().isSaid()) findings.add(GateFindings.hand(gate, true, false));
        findings.add(GateFindings.notWorkedOut(
                gate.id(), "the drop rod of a pair and how its leaves lean on each other are not worked out yet."));
        List<Gates.Hung> worstFirst = new ArrayList<>(shown);
        worstFirst.sort(Gates.WORST_FIRST);
        String sentence = "Seen from outside: a pair, " + gate.id() + "a on the left"
                + kind.swing().value().map(way -> ", swings " + way.key()).orElse(", swing not yet said");
        return Gates.plan(ask, opening, asked, sentence, hangs, Gates.swings(worstFirst), Gates.swings(all), findings);
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

    /** How far the tops of the two leaves miss each other where they meet. */
    private static Finding meeting(GateAsk ask, List<LeafHang> hangs) {
        double halfGap = ask.gate().leaf().latchGap().inches() / 2;
        List<Offset> tops = new ArrayList<>();
        for (LeafHang hang : hangs) {
            Outline outline = hang.leaf().outline();
            double top = outline.topIn(outline.latchEdge().inches() + halfGap);
            tops.add(Offset.inches(hang.pinElevation().inches() + top));
        }
        double miss = Math.abs(tops.get(0).inches() - tops.get(1).inches());
        return GateFindings.meeting(ask.gate(), miss, ask.display());
    }
}
