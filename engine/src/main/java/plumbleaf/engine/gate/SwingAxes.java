package plumbleaf.engine.gate;

import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.geometry.PlanPoint;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * The plan axes of a swing: the pin axis, the direction r from it towards the latch when closed, and the direction to the swing side. Every hand becomes
 * directions here and nowhere else, so a mirrored gate gives mirrored numbers.
 *
 * @param pin the pin axis
 * @param along towards the latch of the closed leaf
 * @param side to the swing side, square to it
 * @param viewerSign +1 when the swing side is the viewer's (swings out), -1 when it is not: the swing-side distance of a point is n times this
 */
public record SwingAxes(PlanPoint pin, Direction along, Direction side, int viewerSign) {
    /**
     * @param pinOffset from the hinge post's face to the pin axis, into the opening
     */
    public static SwingAxes of(Opening opening, Hand hand, Length pinOffset) {
        Direction along = opening.hingeAtStart(hand.hinge())
                ? opening.along()
                : opening.along().reversed();
        // With the hinges on the left, someone outside who faces the gate has the latch on the right: outside is to the
        // right of along.
        Direction outward = hand.hinge() == Side.LEFT ? along.right() : along.left();
        boolean swingsOut = hand.swing() == SwingWay.OUT;
        return new SwingAxes(
                opening.faceAt(hand.hinge()).moved(along, pinOffset),
                along,
                swingsOut ? outward : outward.reversed(),
                swingsOut ? 1 : -1);
    }

    /** Distance of a plan point from the pin axis towards the latch. */
    double alongIn(PlanPoint point) {
        return (point.xIn() - pin.xIn()) * along.east() + (point.yIn() - pin.yIn()) * along.north();
    }

    /** Distance of a plan point from the closed leaf to the swing side. */
    double sideIn(PlanPoint point) {
        return (point.xIn() - pin.xIn()) * side.east() + (point.yIn() - pin.yIn()) * side.north();
    }

    /** The plan point at these distances along and to the swing side. */
    public PlanPoint plan(Offset r, Offset toSwingSide) {
        return pin.moved(along, r).moved(side, toSwingSide);
    }
}
