package plumbleaf.engine.gate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Findings;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.AsSet;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/** Works out a gate: opening, hand, leaves, swing, findings. */
public final class Gates {
    private Gates() {}

    /** A gate worked out, with what would cure it where it drags. */
    public static GatePlan plan(GateAsk asked) {
        return plan(asked, true);
    }

    /** The same without the cures and without the hands not asked for, which are most of the work: for the search over builds. */
    public static GatePlan judged(GateAsk asked) {
        return plan(asked, false);
    }

    private static GatePlan plan(GateAsk asked, boolean cures) {
        GateAsk ask = asked.over(RememberedGround.of(asked.ground()));
        Opening opening = measured(ask.opening(), ask.gate().asSet());
        return ask.gate()
                .kind()
                .match(
                        swing -> swingGate(ask, opening, swing, cures ? Cures.OF_A_SINGLE_LEAF : Cures.NONE),
                        pair -> pairGate(ask, opening, pair, cures ? Cures.OF_A_LEAF : Cures.NONE),
                        slide -> without(
                                ask,
                                opening,
                                "a cantilever slide gate is not worked out yet: its rollers, counterbalance and run-back need"
                                        + " their maker's design."),
                        flagged -> without(
                                ask,
                                opening,
                                "a gate of the kind \"" + flagged.name() + "\" is priced by hand, not worked out."));
    }

    /** The smallest of the three readings rules, once the posts stand. */
    private static Opening measured(Opening planned, List<AsSet> asSet) {
        if (asSet.isEmpty()) return planned;
        AsSet last = asSet.get(asSet.size() - 1);
        Length least = last.top();
        if (last.middle().compareTo(least) < 0) least = last.middle();
        if (last.bottom().compareTo(least) < 0) least = last.bottom();
        return planned.measured(least);
    }

    /** One leaf on one hand, with what it is asked. */
    private record Hung(String part, SwingAsk ask, Swing swing) {}

    private static GatePlan swingGate(GateAsk ask, Opening opening, GateKind.Swing kind, Cures cures) {
        Gate gate = ask.gate();
        double width = LeafLayout.singleWidthIn(gate.leaf(), opening.clear());
        for (Hand hand : Hand.all()) {
            Optional<String> trouble = LeafLayout.trouble(ask, opening, hand, width);
            if (trouble.isPresent()) return cannotBeMade(ask, opening, trouble.get());
        }
        List<Hung> all = new ArrayList<>();
        List<Hand> asked = Hand.agreeing(kind.hinge(), kind.swing());
        for (Hand hand : cures.wanted() ? Hand.all() : asked)
            all.add(hung(gate.id(), ask, LeafLayout.swing(ask, opening, hand, kind.opens())));
        List<Hung> inQuestion = new ArrayList<>(
                all.stream().filter(hung -> asked.contains(hung.ask().hand())).toList());
        inQuestion.sort(WORST_FIRST);
        Hung shown = inQuestion.get(0);
        Leaf leaf = leaf(gate.id() + "a", ask, shown.ask());
        boolean handSaid = asked.size() == 1;
        List<Finding> findings = new ArrayList<>();
        if (!handSaid)
            findings.add(
                    GateFindings.hand(gate, kind.hinge().isSaid(), kind.swing().isSaid()));
        findings.addAll(common(ask));
        findings.addAll(ofLeaf(ask, shown, leaf, cures));
        String sentence = handSaid ? shown.ask().hand().sentence() : "Seen from outside: hand not yet said";
        return plan(ask, opening, asked, sentence, List.of(leaf), swings(inQuestion), swings(all), findings);
    }

    private static GatePlan pairGate(GateAsk ask, Opening opening, GateKind.Pair kind, Cures cures) {
        Gate gate = ask.gate();
        List<Hand> asked = new ArrayList<>();
        List<Hung> shown = new ArrayList<>();
        List<Finding> findings = new ArrayList<>(common(ask));
        List<Leaf> leaves = new ArrayList<>();
        List<Hung> all = new ArrayList<>();
        for (Side side : List.of(Side.LEFT, Side.RIGHT)) {
            boolean isA = side == Side.LEFT;
            String name = gate.id() + (isA ? "a" : "b");
            double share = isA ? kind.split() : 1 - kind.split();
            double width = LeafLayout.pairWidthIn(gate.leaf(), opening.clear(), share);
            Optional<String> trouble = LeafLayout.trouble(ask, opening, new Hand(side, SwingWay.IN), width);
            if (trouble.isPresent()) return cannotBeMade(ask, opening, trouble.get());
            List<Hung> both = new ArrayList<>();
            for (Hand hand : Hand.agreeing(Stated.of(side), kind.swing())) {
                asked.add(hand);
                both.add(hung(name, ask, LeafLayout.swingOfPair(ask, opening, hand, kind.opens(), share)));
            }
            both.sort(WORST_FIRST);
            all.addAll(both);
            Hung worst = both.get(0);
            shown.add(worst);
            Leaf leaf = leaf(name, ask, worst.ask());
            leaves.add(leaf);
            findings.addAll(ofLeaf(ask, worst, leaf, cures));
        }
        findings.add(meeting(ask, leaves, shown));
        if (!kind.swing().isSaid()) findings.add(GateFindings.hand(gate, true, false));
        findings.add(GateFindings.notWorkedOut(
                gate.id(),
                "how the two leaves of a pair hold each other in wind, and the drop rod, are not worked out yet."));
        shown.sort(WORST_FIRST);
        String sentence = "Seen from outside: a pair, " + gate.id() + "a on the left"
                + kind.swing().value().map(way -> ", swings " + way.key()).orElse(", swing not yet said");
        return plan(ask, opening, asked, sentence, leaves, swings(shown), swings(all), findings);
    }

    /** How far the tops of the two leaves miss each other where they meet: each is raked from the ground at its own pins. */
    private static Finding meeting(GateAsk ask, List<Leaf> leaves, List<Hung> shown) {
        List<Double> heights = new ArrayList<>();
        double halfGap = ask.gate().leaf().latchGap().inches() / 2;
        for (int i = 0; i < leaves.size(); i++) {
            Outline outline = leaves.get(i).outline();
            SwingAsk hung = shown.get(i).ask();
            double middle = outline.latchEdge().inches() + halfGap;
            heights.add(elevationAtPin(ask, hung.opening(), hung.hand()) + outline.topIn(middle));
        }
        return GateFindings.meeting(ask.gate(), Math.abs(heights.get(0) - heights.get(1)), ask.display());
    }

    private static GatePlan cannotBeMade(GateAsk ask, Opening opening, String why) {
        List<Finding> findings = List.of(GateFindings.cannotBeMade(ask.gate().id(), why));
        return plan(ask, opening, List.of(), "Not worked out", List.of(), List.of(), List.of(), findings);
    }

    private static GatePlan without(GateAsk ask, Opening opening, String why) {
        List<Finding> findings = List.of(GateFindings.notWorkedOut(ask.gate().id(), why));
        return plan(ask, opening, List.of(), "Not worked out", List.of(), List.of(), List.of(), findings);
    }

    private static final Comparator<Hung> WORST_FIRST = Comparator.<Hung, Offset>comparing(
                    hung -> hung.swing().running().clear())
            .thenComparing(hung -> hung.ask().hand().hinge())
            .thenComparing(hung -> hung.ask().hand().swing());

    private static Hung hung(String part, GateAsk ask, SwingAsk swing) {
        return new Hung(part, swing, Swings.of(swing, ask.ground()));
    }

    private static List<Swing> swings(List<Hung> hung) {
        return hung.stream().map(Hung::swing).toList();
    }

    private static Leaf leaf(String id, GateAsk ask, SwingAsk hung) {
        Opening opening = hung.opening();
        double pin = elevationAtPin(ask, opening, hung.hand());
        double latchGround = ask.ground()
                .elevation(opening.faceAt(hung.hand().hinge().other()))
                .inches();
        double latchZ = latchGround - pin + ask.gate().latch().height().inches();
        return LeafMaker.make(
                id,
                hung.hand(),
                hung.outline(),
                ask.parts(),
                ask.gate().leaf().midRails(),
                ask.gate().hinges(),
                Offset.inches(latchZ));
    }

    private static double elevationAtPin(GateAsk ask, Opening opening, Hand hand) {
        PlanPoint pin =
                SwingAxes.of(opening, hand, ask.parts().hinge().pinOffset()).pin();
        return ask.ground().elevation(pin).inches();
    }

    private static List<Finding> common(GateAsk ask) {
        return List.of(
                GateFindings.release(ask.gate()),
                GateFindings.latchGap(ask.gate(), ask.parts().latch(), ask.display()));
    }

    private static List<Finding> ofLeaf(GateAsk ask, Hung hung, Leaf leaf, Cures cures) {
        List<Finding> findings = new ArrayList<>();
        findings.addAll(doubts(ask, hung));
        findings.addAll(SwingFindings.of(hung.part(), ask, hung.ask(), hung.swing(), cures));
        findings.add(GateFindings.groundGap(hung.part(), ask, hung.swing()));
        findings.add(GateFindings.nose(hung.part(), ask.gate(), hung.ask(), ask.display()));
        findings.add(GateFindings.heel(hung.part(), hung.ask()));
        findings.addAll(GateFindings.leaf(leaf, ask.parts(), ask.display()));
        return findings;
    }

    /** What was assumed of the ground under the swing: looked at under the latch corner as it opens, and where the swing is tightest. */
    private static List<Finding> doubts(GateAsk ask, Hung hung) {
        SwingAsk swing = hung.ask();
        SwingAxes axes =
                SwingAxes.of(swing.opening(), swing.hand(), swing.hinge().pinOffset());
        double tip = swing.outline().latchEdge().inches();
        List<PlanPoint> used = new ArrayList<>();
        for (int eighth = 0; eighth <= 8; eighth++)
            used.add(under(axes, tip, swing.opens().radians() * eighth / 8));
        Clearance worst = hung.swing().running();
        used.add(under(axes, worst.atRadius().inches(), worst.atAngle().radians()));
        return ask.ground().doubts(hung.part(), axes.pin(), Length.inches(tip), used);
    }

    private static PlanPoint under(SwingAxes axes, double r, double q) {
        return axes.plan(Offset.inches(r * StrictMath.cos(q)), Offset.inches(r * StrictMath.sin(q)));
    }

    private static GatePlan plan(
            GateAsk ask,
            Opening opening,
            List<Hand> hands,
            String sentence,
            List<Leaf> leaves,
            List<Swing> shown,
            List<Swing> all,
            List<Finding> findings) {
        Hand hand = leaves.isEmpty() ? Hand.all().get(0) : leaves.get(0).hand();
        return new GatePlan(
                ask.gate().id(),
                hands,
                sentence,
                opening,
                ask.parts().hingePost().depth().times(0.5),
                ask.parts().latchPost().depth().times(0.5),
                LeafLayout.grade(opening, hand, ask.ground()),
                Offset.inches(elevationAtPin(ask, opening, hand)),
                leaves,
                shown,
                all,
                Findings.join(findings));
    }
}
