package plumbleaf.engine.design;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.LeafMake;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.LeafSway;
import plumbleaf.engine.sag.MemberForce;

/** What is to be said of a leaf's rods, its brackets, its twist and its shaking. */
final class SwayFindings {
    /** How far the free top corner may leave the plane of its fence in a service gust before people see it and it knocks: judgement. */
    private static final double TWIST_IN = 1;

    /** Slower than this a leaf follows the gusts and rattles in its latch: judgement. */
    private static final double STEADY_HZ = 3;

    private SwayFindings() {}

    static List<Finding> of(HungLeaf hung, DisplayUnits display) {
        List<Finding> findings = new ArrayList<>();
        LeafSway sway = hung.sag().sway();
        for (LeafSway.Pull rod : sway.rods()) findings.add(rod(hung, sway, rod, display));
        findings.addAll(brackets(hung, display));
        findings.add(Checked.of(
                "leaf.twist",
                Severity.CAUTION,
                hung.id(),
                hung.id() + ": in the service gust the free top corner of the closed leaf leaves its plane by "
                        + display.length(sway.twistGust().inches()) + ", in 0.6 of the design wind by "
                        + display.length(sway.twistWind().inches())
                        + ". A keeper at the top of the latch post, a deeper tube or a latch higher up steadies it.",
                Basis.judgement("1 in. in a service gust"),
                Measure.demand(sway.twistGust().inches(), TWIST_IN, "in")));
        findings.add(Checked.of(
                "leaf.rattle",
                Severity.CAUTION,
                hung.id(),
                hung.id() + ": closed, the leaf shakes " + DecimalText.fixed(sway.hertz(), 1)
                        + " times a second of its own; below " + DecimalText.upTo(STEADY_HZ, 0)
                        + " it follows the gusts and rattles.",
                Basis.judgement("above 3 Hz gusts do not keep it going"),
                Measure.provided(sway.hertz(), STEADY_HZ, "Hz")));
        return findings;
    }

    private static Finding rod(HungLeaf hung, LeafSway sway, LeafSway.Pull rod, DisplayUnits display) {
        String with = display.length(hung.sag().total().inches());
        String without = display.length(sway.withoutRods().inches());
        if (rod.slack())
            return Checked.note(
                    "leaf.rod",
                    Severity.CAUTION,
                    hung.id(),
                    hung.id() + ": " + rod.member()
                            + " goes slack under the leaf's own weight and carries nothing. Run it from the upper"
                            + " hinge corner to the lower latch corner.",
                    Basis.judgement("a rod carries tension alone"));
        return Checked.note(
                "leaf.rod",
                Severity.PASS,
                hung.id(),
                hung.id() + ": " + rod.member() + " pulls "
                        + DecimalText.whole(rod.pull().pounds()) + " lb under the leaf's own weight; the corner drops "
                        + with + " with it and " + without + " without.",
                Basis.judgement("a rod carries tension alone"));
    }

    /** Of a frame that is bolted together; nothing of another. */
    static List<Finding> brackets(HungLeaf hung, DisplayUnits display) {
        LeafSway sway = hung.sag().sway();
        LeafMake make = hung.gate().leaf().make();
        List<Finding> findings = new ArrayList<>();
        if (!make.isBolted()) return findings;
        if (!make.bracket().play().isSaid() || !make.bracket().turnsUnder().isSaid())
            findings.add(Checked.note(
                    "leaf.bracket-play",
                    Severity.CAUTION,
                    hung.id(),
                    hung.id() + ": nobody said how far its corner brackets turn; they are taken to play "
                            + DecimalText.upTo(make.bracket().playOrUsual().inDegrees(), 2)
                            + " degree, which is "
                            + display.length(sway.framePlay().inches())
                            + " at the latch. Ask the maker, or measure one.",
                    Basis.judgement("corner brackets without a sheet")));
        if (!make.bracket().capacity().isSaid()) {
            findings.add(Checked.note(
                    "leaf.bracket",
                    Severity.CANNOT_SAY,
                    hung.id(),
                    hung.id()
                            + ": its corner brackets have no stated capacity, so nobody can say that they hold. Give"
                            + " bracket.capacity in the gate's build from the maker's sheet.",
                    Basis.judgement("an unknown capacity is never a pass")));
            return findings;
        }
        double most = 0;
        for (CaseForces each : hung.cases())
            for (MemberForce force : each.members())
                if (hung.gate()
                        .leaf()
                        .member(force.member())
                        .map(Member::role)
                        .filter(MemberRole::isRail)
                        .isPresent())
                    for (MemberForce.End end : force.ends())
                        most = Math.max(most, end.inPlane().poundInches());
        double capacity = make.bracket().capacity().value().orElseThrow().poundInches();
        findings.add(Checked.of(
                "leaf.bracket",
                Severity.MUST_FIX,
                hung.id(),
                hung.id() + ": a corner bracket takes " + DecimalText.whole(most / 12)
                        + " lb-ft at most; it may carry "
                        + DecimalText.whole(capacity / 12) + ".",
                Basis.judgement("capacity as the job states it"),
                Measure.demand(most, capacity, "lb-in")));
        return findings;
    }
}
