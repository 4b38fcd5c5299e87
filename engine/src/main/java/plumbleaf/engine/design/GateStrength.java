package plumbleaf.engine.design;

import java.util.List;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.quantity.WorkedLine;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.MemberForce;
import plumbleaf.engine.section.Rods;
import plumbleaf.engine.strength.Interaction;

/** Strength of a hung gate: its frame, and what it does to its posts. */
final class GateStrength {
    /** A post is held at grade alone; a frame member at both ends: its length counts once. */
    private static final double CANTILEVER = 2.1;

    private static final String SOURCE = "AISC 360-22 H1.1, H3.2 (ASD, omega 1.67)";

    private static final Basis CLAUSE = Basis.clause(SOURCE);

    private GateStrength() {}

    /** The member of the frame that is used most, in one case. */
    record FrameUse(String member, CaseForces worst, double utilisation) {}

    static FrameUse frame(HungLeaf hung, boolean withWind) {
        return frame(hung.gate().leaf(), hung.cases(), withWind);
    }

    private static FrameUse frame(Leaf leaf, List<CaseForces> cases, boolean withWind) {
        FrameUse most = new FrameUse("", cases.get(0), -1);
        for (CaseForces each : cases) {
            if (!withWind && each.combination().wind() > 0) continue;
            for (MemberForce force : each.members()) {
                double ratio = ratio(leaf, force);
                if (Ties.isMore(ratio, most.utilisation())) most = new FrameUse(force.member(), each, ratio);
            }
        }
        return most;
    }

    static double ratio(HungLeaf hung, MemberForce force) {
        return ratio(hung.gate().leaf(), force);
    }

    private static double ratio(Leaf leaf, MemberForce force) {
        Member member = leaf.member(force.member()).orElseThrow();
        if (member.role() == MemberRole.ROD)
            return force.axial().pounds()
                    / Rods.threadCapacity(member.section()).pounds();
        return Interaction.ratio(
                member.section(), force.asAction(), member.cutLength().times(1 / CANTILEVER));
    }

    /** A member at its hardest place, or the thread of a rod, line by line. */
    private static List<WorkedLine> lines(Member member, MemberForce force) {
        if (member.role() == MemberRole.ROD)
            return List.of(WorkedLine.of("ratio", "T / Ta")
                    .put("T", force.axial())
                    .put("Ta", Rods.threadCapacity(member.section()))
                    .gives(force.axial().pounds()
                            / Rods.threadCapacity(member.section()).pounds()));
        return Interaction.lines(
                member.section(), force.asAction(), member.cutLength().times(1 / CANTILEVER), false);
    }

    static LinkWork work(HungLeaf hung, FrameUse use) {
        MemberForce force = use.worst().members().stream()
                .filter(each -> each.member().equals(use.member()))
                .findFirst()
                .orElseThrow();
        Member member = hung.gate().leaf().member(use.member()).orElseThrow();
        return new LinkWork(
                "Pr/(2 Pc) + Mr/Mc, or Pr/Pc + 8/9 Mr/Mc; with torsion over 0.2: Pr/Pc + Mr/Mc + (Vr/Vc + Tr/Tc)2",
                DecimalText.whole(Math.abs(force.axial().pounds()))
                        + (force.axial().pounds() < 0 ? " lb compression, " : " lb tension, ")
                        + DecimalText.whole(force.inPlane().poundInches()) + " lb-in in and "
                        + DecimalText.whole(force.outOfPlane().poundInches()) + " lb-in out of the plane, torsion "
                        + DecimalText.whole(force.torsion().poundInches()) + " lb-in; "
                        + Interaction.capacities(
                                member.section(), member.cutLength().times(1 / CANTILEVER))
                        + "; " + member.section().name(),
                SOURCE,
                lines(member, force));
    }

    static List<Finding> findings(String gate, HungGate hung, List<CaseForces> cases, DesignBasis basis) {
        Severity windy = basis == DesignBasis.ENGINEERED ? Severity.MUST_FIX : Severity.CAUTION;
        return List.of(
                finding("leaf.frame", Severity.MUST_FIX, gate, frame(hung.leaf(), cases, false)),
                finding("leaf.wind", windy, gate, frame(hung.leaf(), cases, true)));
    }

    private static Finding finding(String id, Severity failed, String gate, FrameUse use) {
        String message = gate + ": " + use.member() + " carries " + DecimalText.fixed(use.utilisation(), 2)
                + " of what it may (" + use.worst().combination().key() + ", leaf "
                + use.worst().state().key() + ").";
        return Checked.of(id, failed, gate, message, CLAUSE, Measure.demand(use.utilisation(), 1, ""));
    }
}
