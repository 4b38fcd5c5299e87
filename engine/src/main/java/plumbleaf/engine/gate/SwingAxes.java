package plumbleaf.engine.gate;

import plumbleaf.engine.catalogue.PinPlace;
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
 * @param pinSide how far the pin stands off the closed leaf's middle plane, to the swing side
 * @param viewerSign +1 when the swing side is the viewer's (swings out), -1 when it is not: the swing-side distance of a point is n times this
 */
public record SwingAxes(PlanPoint pin, Direction along, Direction side, Length pinSide, int viewerSign) {
    /** The axes of a leaf on this hinge, whose pin may stand off the line of the fence. */
    public static SwingAxes of(Opening opening, Hand hand, PinPlace place) {
        Direction along = opening.hingeAtStart(hand.hinge())
                ? opening.along()
                : opening.along().reversed();
        // With the hinges on the left, someone outside who faces the gate has the latch on the right: outside is to the
        // right of along.
        Direction outward = hand.hinge() == Side.LEFT ? along.right() : along.left();
        boolean swingsOut = hand.swing() == SwingWay.OUT;
        Direction side = swingsOut ? outward : outward.reversed();
        return new SwingAxes(
                opening.faceAt(hand.hinge()).moved(along, place.offset()).moved(side, place.swingSide()),
                along,
                side,
                place.swingSide(),
                swingsOut ? 1 : -1);
    }

    /** Distance of a plan point from the pin axis towards the latch. */
    double alongIn(PlanPoint point) {
        return (point.xIn() - pin.xIn()) * along.east() + (point.yIn() - pin.yIn()) * along.north();
    }

    /** Distance of a plan point from the pin to the swing side. */
    double sideIn(PlanPoint point) {
        return (point.xIn() - pin.xIn()) * side.east() + (point.yIn() - pin.yIn()) * side.north();
    }

    /** The plan point at these distances from the pin along the closed leaf and from its middle plane to the swing side. */
    public PlanPoint plan(Offset r, Offset toSwingSide) {
        return pin.moved(along, r).moved(side, toSwingSide.minus(pinSide.asOffset()));
    }

    /** The plan point under the middle plane of a leaf that stands open, r from the pin along it: {@code pin + r u(q) - e v(q)}. */
    public PlanPoint under(double rIn, double openRad) {
        double cos = StrictMath.cos(openRad);
        double sin = StrictMath.sin(openRad);
        double off = pinSide.inches();
        return pin.moved(along, Offset.inches(rIn * cos + off * sin)).moved(side, Offset.inches(rIn * sin - off * cos));
    }
}
