package plumbleaf.engine.design;

import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.SlidePlan;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Ties;
import plumbleaf.engine.sag.MemberForce;
import plumbleaf.engine.sag.SlideCase;
import plumbleaf.engine.strength.Interaction;

/** Strength of a slide leaf's frame: each member with its axial force, both bendings, shear and torsion together. */
final class SlideStrength {
    static final String CLAUSE = "AISC 360-22 H1.1, H3.2 (ASD, omega 1.67)";
    private static final String FORMULA =
            "Pr/(2 Pc) + Mr/Mc, or Pr/Pc + 8/9 Mr/Mc; with torsion over 0.2: Pr/Pc + Mr/Mc + (Vr/Vc + Tr/Tc)2";

    /**
     * Interaction counts a post that is held at grade alone; a frame member is held at both ends, so its length is cut by the post's factor.
     * Source: AISC 360-22 Commentary Table C-A-7.1, case e, from memory.
     */
    private static final double CANTILEVER = 2.1;

    private SlideStrength() {}

    /** What of a leaf is used most in one case: a member or the weld at its end. */
    record Use(String member, SlideCase worst, double utilisation) {
        String inCase() {
            return worst.combination().key() + ", " + worst.state().key();
        }
    }

    /**
     * A rail counts as free to leave the leaf's plane from the front rollers to the nose, though its uprights hold it by their bending; every other member over its own
     * length. On the safe side. Source: AISC 360-22 H1.1; lengths, judgement.
     */
    static Length unbraced(SlidePlan plan, Member member) {
        return member.role().isRail() ? plan.shape().travel().plus(plan.shape().front()) : member.cutLength();
    }

    static double ratio(SlidePlan plan, MemberForce force) {
        Member member = plan.leaf().member(force.member()).orElseThrow();
        return Interaction.ratio(
                member.section(), force.asAction(), unbraced(plan, member).times(1 / CANTILEVER));
    }

    static Use frame(SlideDesign slide, boolean withWind) {
        Use most = new Use("", slide.cases().get(0), -1);
        for (SlideCase each : slide.cases()) {
            if (!withWind && each.combination().hasWind()) continue;
            for (MemberForce force : each.members()) {
                double here = ratio(slide.gate().plan(), force);
                if (Ties.isMore(here, most.utilisation())) most = new Use(force.member(), each, here);
            }
        }
        return most;
    }

    /** Rails run through: what is welded are the ends of uprights and diagonals. */
    static Use weld(SlideDesign slide, boolean withWind) {
        Leaf leaf = slide.gate().plan().leaf();
        Use most = new Use("", slide.cases().get(0), -1);
        for (SlideCase each : slide.cases()) {
            if (!withWind && each.combination().hasWind()) continue;
            for (MemberForce force : each.members()) {
                Member member = leaf.member(force.member()).orElseThrow();
                if (member.role().isRail()) continue;
                double here = FrameWelds.use(member, force, leaf.make().joint());
                if (Ties.isMore(here, most.utilisation())) most = new Use(force.member(), each, here);
            }
        }
        return most;
    }

    static MemberForce force(Use use) {
        return use.worst().members().stream()
                .filter(each -> each.member().equals(use.member()))
                .findFirst()
                .orElseThrow();
    }

    static LinkWork work(SlidePlan plan, Use use) {
        MemberForce force = force(use);
        Member member = plan.leaf().member(use.member()).orElseThrow();
        return new LinkWork(
                FORMULA,
                DecimalText.whole(Math.abs(force.axial().pounds()))
                        + (force.axial().pounds() < 0 ? " lb compression, " : " lb tension, ")
                        + DecimalText.whole(force.inPlane().poundInches()) + " lb-in in and "
                        + DecimalText.whole(force.outOfPlane().poundInches()) + " lb-in out of the plane, torsion "
                        + DecimalText.whole(force.torsion().poundInches()) + " lb-in; "
                        + Interaction.capacities(
                                member.section(), unbraced(plan, member).times(1 / CANTILEVER))
                        + "; " + member.section().name(),
                CLAUSE,
                Interaction.lines(
                        member.section(),
                        force.asAction(),
                        unbraced(plan, member).times(1 / CANTILEVER),
                        false));
    }

    static LinkWork weldWork(SlidePlan plan, Use use) {
        Member member = plan.leaf().member(use.member()).orElseThrow();
        return new LinkWork(
                FrameWelds.FORMULA,
                DecimalText.whole(FrameWelds.perInch(
                                member, force(use), plan.leaf().make().joint()))
                        + " lb an inch of " + DecimalText.whole(FrameWelds.allowable(member.section())),
                FrameWelds.CLAUSE,
                FrameWelds.lines(member, force(use), plan.leaf().make().joint()));
    }
}
