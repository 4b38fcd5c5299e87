package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Rods;
import plumbleaf.engine.section.Section;

/**
 * A tension rod from corner to corner of the leaf, on the face of any rail between: an eye at each end pinned to a tab in the corner, a turnbuckle in the
 * middle. Its length is from eye to eye.
 */
final class RodBrace {
    /** The pin of an eye from the inner corner, along the rod. Common practice, no source. */
    private static final double EYE_FROM_CORNER_IN = 1.5;

    /** A tab is welded along this much of the stile, both sides. Common practice, no source. */
    private static final Length TAB = Length.inches(2);

    private final LeafMembers frame;
    private final Section rod;
    private final int top;

    RodBrace(LeafMembers frame, Bracing.Rod rod) {
        this.frame = frame;
        this.rod = Rods.round(rod.diameter());
        this.top = frame.lines().rails().size() - 1;
    }

    void fromTopHinge() {
        FrameLines lines = frame.lines();
        double from = lines.hingeFaceIn();
        double to = lines.latchFaceIn();
        between(Place.inPlane(from, lines.underRailIn(top, from)), Place.inPlane(to, lines.overRailIn(0, to)), top, 0);
    }

    void fromLowHinge() {
        FrameLines lines = frame.lines();
        double from = lines.hingeFaceIn();
        double to = lines.latchFaceIn();
        between(Place.inPlane(from, lines.overRailIn(0, from)), Place.inPlane(to, lines.underRailIn(top, to)), 0, top);
    }

    private void between(Place hinge, Place latch, int hingeRail, int latchRail) {
        Cut square = new Cut(Angle.ZERO, "eye");
        Member made = frame.place(
                MemberRole.ROD,
                rod,
                inset(hinge, latch),
                inset(latch, hinge),
                MemberEnd.one(square),
                MemberEnd.one(square),
                EndsTurn.PARALLEL);
        frame.joins(0, hingeRail, made);
        frame.joins(1, latchRail, made);
        double middleR = (made.from().r().inches() + made.to().r().inches()) / 2;
        double middleZ = (made.from().z().inches() + made.to().z().inches()) / 2;
        frame.fit(new Fitting("turnbuckle", Place.inPlane(middleR, middleZ), turnbuckle()));
        frame.fit(new Fitting("rod eye", made.from(), eye()));
        frame.fit(new Fitting("rod eye", made.to(), eye()));
        for (String joint : List.of(
                frame.jointAt(0, hingeRail).id(), frame.jointAt(1, latchRail).id()))
            frame.weld(new Weld(joint, WeldKind.FILLET, TAB.times(2), "tab of the rod's eye, both sides", 2, false));
    }

    /** A body as heavy as two and a half times the rod it is put in place of: judgement. */
    private Force turnbuckle() {
        return rod.weightOf(RodCut.TURNBUCKLE).times(2.5);
    }

    /** Eye, pin and tab: as heavy as ten diameters of rod: judgement. */
    private Force eye() {
        return rod.weightOf(rod.depth().times(10));
    }

    private static Place inset(Place corner, Place towards) {
        double dr = towards.r().inches() - corner.r().inches();
        double dz = towards.z().inches() - corner.z().inches();
        double share = EYE_FROM_CORNER_IN / Math.sqrt(dr * dr + dz * dz);
        return Place.inPlane(corner.r().inches() + dr * share, corner.z().inches() + dz * share);
    }
}
