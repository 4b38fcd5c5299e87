package plumbleaf.engine.gate;

import java.util.List;
import plumbleaf.engine.quantity.Angle;

/** The second brace of a cross: cut in two against the one that runs through, each half with its point in a corner. */
final class CrossBrace {
    private static final int PANEL = 0;

    private final LeafMembers frame;
    private final Member through;
    private final double climb;

    CrossBrace(LeafMembers frame, Member through) {
        this.frame = frame;
        this.through = through;
        this.climb = slope(through.from(), through.to());
    }

    void cut() {
        FrameLines lines = frame.lines();
        double from = lines.hingeFaceIn();
        double to = lines.latchFaceIn();
        Place hinge = Place.inPlane(from, lines.underRailIn(PANEL + 1, from));
        Place latch = Place.inPlane(to, lines.overRailIn(PANEL, to));
        Place middle = crossing(through.from(), through.to(), hinge, latch);
        double angle = StrictMath.atan(climb) - StrictMath.atan(slope(hinge, latch));
        double back = frame.depthIn() / 2 / StrictMath.sin(angle);
        Cut against = new Cut(Angle.radians(Math.abs(Math.PI / 2 - angle)), through.id());
        Member upper =
                half(hinge, towards(middle, hinge, back), frame.point(hinge, latch, 0, PANEL + 1), against, true);
        frame.joinCorner(0, PANEL + 1, upper, upper.firstEnd());
        Member lower = half(towards(middle, latch, back), latch, frame.point(hinge, latch, 1, PANEL), against, false);
        frame.joinCorner(1, PANEL, lower, lower.lastEnd());
        Place axes = crossing(
                frame.jointAt(0, PANEL).at(),
                frame.jointAt(1, PANEL + 1).at(),
                frame.jointAt(0, PANEL + 1).at(),
                frame.jointAt(1, PANEL).at());
        String joint = frame.newJoint(axes, List.of(through.id(), upper.id(), lower.id()));
        for (int side = 0; side < 2; side++) frame.weldTee(joint, against.fromSquare());
    }

    /** Between its point and the through brace; both cuts turn the same way as for any brace. */
    private Member half(Place from, Place to, MemberEnd point, Cut against, boolean pointFirst) {
        MemberEnd butt = new MemberEnd(List.of(against), frame.tube().isRound());
        return frame.place(
                MemberRole.BRACE,
                frame.tube(),
                from,
                to,
                pointFirst ? point : butt,
                pointFirst ? butt : point,
                EndsTurn.PARALLEL);
    }

    private static double slope(Place a, Place b) {
        return (b.z().inches() - a.z().inches()) / (b.r().inches() - a.r().inches());
    }

    private static Place towards(Place from, Place to, double by) {
        double dr = to.r().inches() - from.r().inches();
        double dz = to.z().inches() - from.z().inches();
        double length = Math.sqrt(dr * dr + dz * dz);
        return Place.inPlane(from.r().inches() + dr * by / length, from.z().inches() + dz * by / length);
    }

    /** Where two lines that are not plumb cross. */
    static Place crossing(Place a, Place b, Place c, Place d) {
        double first = slope(a, b);
        double second = slope(c, d);
        double r =
                (c.z().inches() - a.z().inches() + first * a.r().inches() - second * c.r().inches()) / (first - second);
        return Place.inPlane(r, a.z().inches() + first * (r - a.r().inches()));
    }
}
