package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumbleaf.engine.catalogue.LatchModel;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.Place;
import plumbleaf.engine.ground.Profile;
import plumbleaf.engine.ground.ProfilePoint;
import plumbleaf.engine.job.Guarded;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.rule.GuardRules;
import plumbleaf.engine.rule.RuleTable;
import plumbleaf.engine.strength.TubeStrength;

/**
 * A gate beside a drop: closed, each of its leaves is a piece of the guard, and people lean on its top as on the fence's. Its top rail bends between the stiles; its
 * latch takes all of a push at its free edge, as if the leaf did not turn about its middle. Check: GuardPostCheck.
 */
final class GuardGate {
    private final Guarded guard;
    private final GateDesign design;
    private final Profile profile;
    private final RuleTable rules;

    GuardGate(Guarded guard, GateDesign design, Profile profile, RuleTable rules) {
        this.guard = guard;
        this.design = design;
        this.profile = profile;
        this.rules = rules;
    }

    List<Finding> findings() {
        if (design.plan().hangs().isEmpty())
            return List.of(Checked.note(
                    "guard.gate",
                    Severity.CANNOT_SAY,
                    design.id(),
                    "Gate " + design.id()
                            + " stands in a guard and is of a kind, or a size, that is not worked out as one: its height, its openings and what people lean on it are not checked.",
                    rules.row("GD05").basis()));
        List<Finding> findings = new ArrayList<>();
        for (LeafHang hang : design.plan().hangs()) {
            Length under = PoolRules.atLeastZero(hang.swing().closedLargest().clear());
            Length through = LeafOpenings.widest(design, hang.leaf());
            findings.addAll(GuardRules.of(
                    hang.leaf().id(),
                    leastHeight(hang),
                    through.compareTo(under) > 0 ? through : under,
                    guard.dwelling(),
                    rules));
            findings.add(rail(hang));
        }
        findings.add(latch());
        findings.add(Checked.note(
                "guard.gate",
                Severity.CAUTION,
                design.id(),
                "Gate " + design.id()
                        + " stands in a guard: open, there is none. Let it close and latch by itself, and swing away from the drop.",
                Basis.judgement("an open gate guards nothing")));
        return findings;
    }

    /** The top of the leaf over the ground on the line, at every bend of the ground under it. */
    private Length leastHeight(LeafHang hang) {
        List<Place> corners = hang.leaf().outline().corners();
        double latch = corners.get(2).z().inches() + hang.pinElevation().inches();
        double hinge = corners.get(3).z().inches() + hang.pinElevation().inches();
        Offset from = design.plan().opening().station().asOffset();
        Offset to = from.plus(design.plan().opening().clear().asOffset());
        boolean hingeFirst =
                design.plan().opening().hingeAtStart(hang.leaf().hand().hinge());
        double wide = hang.leaf().width().inches();
        double start = hingeFirst ? from.inches() : to.inches() - wide;
        double atStart = hingeFirst ? hinge : latch;
        double atEnd = hingeFirst ? latch : hinge;
        double least = Double.POSITIVE_INFINITY;
        for (ProfilePoint point : profile.between(new Offset(start), new Offset(start + wide))) {
            double share = (point.station().inches() - start) / wide;
            double top = atStart + share * (atEnd - atStart);
            least = Math.min(least, top - point.elevation().inches());
        }
        return Length.inches(Math.max(0, least));
    }

    /** The topmost rail across its weak way, on a simple span from stile to stile. */
    private Finding rail(LeafHang hang) {
        List<Member> rails = hang.leaf().rails();
        Member top = rails.get(rails.size() - 1);
        Length span = hang.leaf().width();
        double momentLbIn = GuardLoad.onRailLbPerIn(guard, span) * span.inches() * span.inches() / 8;
        double ratio = momentLbIn / TubeStrength.of(top.section()).allowableY().poundInches();
        return new Checked(
                "guard.rail",
                ratio <= 1 ? Severity.PASS : Severity.MUST_FIX,
                hang.leaf().id(),
                "A person against the top rail of leaf " + hang.leaf().id() + " takes " + DecimalText.fixed(ratio, 2)
                        + " of its bending strength.",
                Basis.clause("ASCE 7-16 4.5.1; AISC 360-22 F7, F8 (ASD); local code governs"),
                Optional.of(Measure.demand(ratio, 1, "")),
                List.of());
    }

    private Finding latch() {
        LatchModel latch = design.parts().latch();
        double push = GuardLoad.on(
                        guard, design.plan().hangs().get(0).leaf().width().times(0.5))
                .pounds();
        if (latch.holds().isZero())
            return Checked.note(
                    "guard.latch",
                    Severity.CANNOT_SAY,
                    design.id(),
                    "Gate " + design.id() + " stands in a guard and its latch takes " + DecimalText.whole(push)
                            + " lb; what " + latch.name() + " holds is not known.",
                    Basis.judgement("unknown is never a pass"));
        return Checked.of(
                "guard.latch",
                Severity.MUST_FIX,
                design.id(),
                "People against the free edge of " + design.id() + " push its latch with " + DecimalText.whole(push)
                        + " lb; the " + latch.name() + " holds "
                        + DecimalText.whole(latch.holds().pounds()) + " lb.",
                Basis.clause("ASCE 7-16 4.5.1; " + latch.source()),
                Measure.demand(push, latch.holds().pounds(), "lb"));
    }
}
