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
import plumbleaf.engine.job.HingeSpec;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;

/** Works out a gate: opening, hand, leaves, swing, findings. */
public final class Gates {
    private Gates() {}

    /** A gate worked out, with what would cure it where it drags. */
    public static GatePlan plan(GateAsk asked) {
        return plan(asked, Cures.OF_A_SINGLE_LEAF);
    }

    /** The same without the cures, the hands not asked for and the picture of its swing, which are most of the work: for the search over builds. */
    public static GatePlan judged(GateAsk asked) {
        return plan(asked, Cures.NONE);
    }

    /** Its leaves in their places, without a word about them: enough to hang them and to price them. */
    public static GatePlan laid(GateAsk asked) {
        return plan(asked, Cures.UNSAID);
    }

    private static GatePlan plan(GateAsk asked, Cures cures) {
        GateAsk measured = asked.over(RememberedGround.of(asked.ground()));
        List<AsSetFit> fits = fits(measured);
        Opening opening = fits.isEmpty()
                ? measured.opening()
                : measured.opening().measured(fits.get(0).clear());
        GateAsk ask = measured.over(LandedGround.of(measured, opening));
        return ask.gate()
                .kind()
                .match(
                        swing -> swingGate(ask, opening, swing, cures),
                        pair -> PairGates.plan(ask, opening, pair, cures.wanted() ? Cures.OF_A_LEAF : cures),
                        slide -> SlideGates.plan(ask, opening, slide, cures.wanted()),
                        flagged -> without(
                                ask,
                                opening,
                                "a gate of the kind \"" + flagged.name() + "\" is priced by hand, not worked out."));
    }

    /** Each leaf's room between the posts as they stand, by the last time they were measured: of a pair the second hangs on what the reading calls the latch post. */
    static List<AsSetFit> fits(GateAsk ask) {
        Gate gate = ask.gate();
        if (gate.lastSet().isEmpty()) return List.of();
        AsSet last = gate.lastSet().get();
        AsSetFit first = fit(gate, last, gate.id() + "a");
        boolean pair = gate.kind().match(swing -> false, is -> true, slide -> false, flagged -> false);
        return pair ? List.of(first, fit(gate, last.fromTheOtherPost(), gate.id() + "b")) : List.of(first);
    }

    private static AsSetFit fit(Gate gate, AsSet reading, String leafId) {
        LeafSpec leaf = gate.leaf();
        double height = leaf.infill().inches() - leaf.infillBelowFrame().inches();
        HingeSpec hinges = gate.hinges();
        double low = hinges.fromBottom().inches();
        double high = height - hinges.fromTop().inches();
        List<AsSetFit.At> at = new ArrayList<>();
        for (int i = 0; i < hinges.count(); i++)
            at.add(new AsSetFit.At(leafId + ".h" + (i + 1), low + (high - low) * i / (hinges.count() - 1)));
        return AsSetFit.of(reading, height, at, leaf.hingeGap(), leaf.latchGap());
    }

    /** One leaf on one hand, with what it is asked. */
    record Hung(String part, SwingAsk ask, Swing swing) {}

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
            all.add(hung(gate.id(), ask, LeafLayout.swing(ask, opening, hand, kind.opens()), cures));
        List<Hung> inQuestion = new ArrayList<>(
                all.stream().filter(hung -> asked.contains(hung.ask().hand())).toList());
        inQuestion.sort(WORST_FIRST);
        Hung shown = inQuestion.get(0);
        Hand hand = shown.ask().hand();
        PlanPoint latchFoot = opening.faceAt(hand.hinge().other());
        Slope grade = LeafLayout.grade(opening, hand, ask.ground());
        LeafHang hang = hang(gate.id() + "a", ask, shown, grade, latchFoot);
        boolean handSaid = asked.size() == 1;
        List<Finding> findings = cures.said() ? said(ask, kind, shown, hang, handSaid, cures) : List.of();
        String sentence = handSaid ? shown.ask().hand().sentence() : "Seen from outside: hand not yet said";
        return plan(
                        ask,
                        opening,
                        asked,
                        sentence,
                        List.of(hang),
                        Optional.empty(),
                        swings(inQuestion),
                        swings(all),
                        findings)
                .regraded(regrades(ask, List.of(shown)));
    }

    private static List<Finding> said(
            GateAsk ask, GateKind.Swing kind, Hung shown, LeafHang hang, boolean handSaid, Cures cures) {
        List<Finding> findings = new ArrayList<>();
        if (!handSaid)
            findings.add(GateFindings.hand(
                    ask.gate(), kind.hinge().isSaid(), kind.swing().isSaid()));
        findings.addAll(common(ask));
        findings.addAll(ofLeaf(ask, shown, hang.leaf(), cures));
        for (AsSetFit fit : fits(ask)) findings.addAll(AsSetFindings.of(hang.leaf(), fit, kind.opens(), ask));
        return findings;
    }

    /** Ground that is shaved under the leaves that would strike it, where the job says so. */
    static List<Regrade> regrades(GateAsk ask, List<Hung> leaves) {
        List<Regrade> cuts = new ArrayList<>();
        if (ask.ground() instanceof LandedGround landed) {
            for (Hung leaf : leaves) cuts.add(landed.soil(leaf.part(), leaf.ask()));
            return cuts;
        }
        if (!ask.gate().ground().regrade()) return cuts;
        for (Hung leaf : leaves)
            if (!leaf.swing().clearsGround()) cut(ask, leaf).ifPresent(cuts::add);
        return cuts;
    }

    private static Optional<Regrade> cut(GateAsk ask, Hung leaf) {
        double marginIn = 2 * leaf.ask().shotError().inches();
        return ArcCut.of(leaf.part(), leaf.ask(), leaf.swing(), ask.ground(), marginIn);
    }

    static GatePlan cannotBeMade(GateAsk ask, Opening opening, String why) {
        List<Finding> findings = List.of(GateFindings.cannotBeMade(ask.gate().id(), why));
        return plan(
                ask, opening, List.of(), "Not worked out", List.of(), Optional.empty(), List.of(), List.of(), findings);
    }

    private static GatePlan without(GateAsk ask, Opening opening, String why) {
        List<Finding> findings = List.of(GateFindings.notWorkedOut(ask.gate().id(), why));
        return plan(
                ask, opening, List.of(), "Not worked out", List.of(), Optional.empty(), List.of(), List.of(), findings);
    }

    static final Comparator<Hung> WORST_FIRST = Comparator.<Hung, Offset>comparing(
                    hung -> hung.swing().running().clear())
            .thenComparing(hung -> hung.ask().hand().hinge())
            .thenComparing(hung -> hung.ask().hand().swing());

    static Hung hung(String part, GateAsk ask, SwingAsk swing, Cures cures) {
        return new Hung(
                part, swing, cures.wanted() ? Swings.of(swing, ask.ground()) : Swings.tried(swing, ask.ground()));
    }

    static List<Swing> swings(List<Hung> hung) {
        return hung.stream().map(Hung::swing).toList();
    }

    /** Drawn out where it hangs, on a grade, with a latch at its latch edge. */
    private static LeafHang hang(String id, GateAsk ask, Hung hung, Slope grade, PlanPoint latchFoot) {
        SwingAsk swing = hung.ask();
        Leaf leaf = LeafMaker.make(
                id,
                swing.hand(),
                swing.outline(),
                swing.parts(),
                ask.gate().leaf().midRails(),
                ask.gate().leaf().midRailsAt(),
                ask.gate().hinges(),
                latchZ(ask, swing, latchFoot));
        return new LeafHang(
                leaf, grade, Offset.inches(elevationAtPin(ask, swing.opening(), swing.hand())), hung.swing());
    }

    /** Height of the latch from grade at the pin: it is asked for from grade below the latch. */
    static Offset latchZ(GateAsk ask, SwingAsk swing, PlanPoint latchFoot) {
        double pin = elevationAtPin(ask, swing.opening(), swing.hand());
        double latchGround = ask.ground().elevation(latchFoot).inches();
        return Offset.inches(latchGround - pin + ask.gate().latch().height().inches());
    }

    static double elevationAtPin(GateAsk ask, Opening opening, Hand hand) {
        PlanPoint pin = SwingAxes.of(opening, hand, ask.parts().hinge().pin()).pin();
        return ask.ground().elevation(pin).inches();
    }

    static List<Finding> common(GateAsk ask) {
        List<Finding> common = new ArrayList<>(List.of(
                GateFindings.release(ask.gate()),
                GapFindings.latchGap(ask.gate(), ask.parts().latch(), ask.display())));
        if (!ask.gate().ground().setBack().isZero()) common.add(SwingFindings.setBack(ask));
        return common;
    }

    static List<Finding> ofLeaf(GateAsk ask, Hung hung, Leaf leaf, Cures cures) {
        List<Finding> findings = new ArrayList<>();
        findings.addAll(doubts(ask, hung));
        findings.addAll(SwingFindings.of(hung.part(), ask, hung.ask(), hung.swing(), cures));
        if (ask.ground() instanceof LandedGround landed)
            findings.add(SwingFindings.landed(ask.display(), landed.soil(hung.part(), hung.ask())));
        findings.add(GateFindings.groundGap(hung.part(), ask, hung.swing()));
        findings.addAll(GapFindings.ofLeaf(hung.part(), ask, hung.ask()));
        findings.addAll(GateFindings.leaf(leaf, hung.ask().parts(), ask.display()));
        return findings;
    }

    /** What was assumed of the ground under the swing: looked at under the latch corner as it opens, and where the swing is tightest. */
    private static List<Finding> doubts(GateAsk ask, Hung hung) {
        SwingAsk swing = hung.ask();
        SwingAxes axes =
                SwingAxes.of(swing.opening(), swing.hand(), swing.hinge().pin());
        double tip = swing.outline().latchEdge().inches();
        List<PlanPoint> used = new ArrayList<>();
        for (int eighth = 0; eighth <= 8; eighth++)
            used.add(axes.under(tip, swing.opens().radians() * eighth / 8));
        Clearance worst = hung.swing().running();
        used.add(axes.under(worst.atRadius().inches(), worst.atAngle().radians()));
        return ask.ground().doubts(hung.part(), axes.pin(), Length.inches(tip), used);
    }

    static GatePlan plan(
            GateAsk ask,
            Opening opening,
            List<Hand> hands,
            String sentence,
            List<LeafHang> hangs,
            Optional<MeetingPlace> meeting,
            List<Swing> shown,
            List<Swing> all,
            List<Finding> findings) {
        Hand hand = hangs.isEmpty() ? Hand.all().get(0) : hangs.get(0).leaf().hand();
        return new GatePlan(
                ask.gate().id(),
                hands,
                sentence,
                opening,
                ask.parts().hingePost().depth().times(0.5),
                ask.parts().latchPost().depth().times(0.5),
                hangs.isEmpty()
                        ? LeafLayout.grade(opening, hand, ask.ground())
                        : hangs.get(0).grade(),
                Offset.inches(elevationAtPin(ask, opening, hand)),
                fits(ask),
                hangs,
                meeting,
                Optional.empty(),
                shown,
                all,
                List.of(),
                Findings.join(findings));
    }
}
