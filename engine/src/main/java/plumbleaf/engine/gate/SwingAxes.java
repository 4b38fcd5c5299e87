package plumbleaf.engine.gate;

import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * The plan axes of a swing: the pin axis, the direction r from it towards the latch when closed, and the direction to the swing side. Every hand becomes
 * directions here and nowhere else, so a mirrored gate gives mirrored numbers.
 *
 * @param pinEast of the pin axis
 * @param pinNorth of the pin axis
 * @param alongEast east part of the unit vector towards the latch
 * @param alongNorth north part of it
 * @param sideEast east part of the unit vector to the swing side
 * @param sideNorth north part of it
 * @param viewerSign +1 when the swing side is the viewer's (swings out), -1 when it is not: the swing-side distance of a point is n times this
 */
public record SwingAxes(
        Offset pinEast,
        Offset pinNorth,
        double alongEast,
        double alongNorth,
        double sideEast,
        double sideNorth,
        int viewerSign) {
    /**
     * @param pinOffset from the hinge post's face to the pin axis, into the opening
     */
    public static SwingAxes of(Opening opening, Hand hand, Length pinOffset) {
        boolean atStart = opening.hingeAtStart(hand.hinge());
        double sign = atStart ? 1 : -1;
        double alongEast = sign * opening.directionEast();
        double alongNorth = sign * opening.directionNorth();
        double fromStart = atStart ? pinOffset.inches() : opening.clear().inches() - pinOffset.inches();
        // The viewer stands outside with the hinges on the left when along points to his right: outside is then to the
        // right of along.
        double outwardSign = hand.hinge() == Side.LEFT ? 1 : -1;
        double outEast = outwardSign * alongNorth;
        double outNorth = -outwardSign * alongEast;
        int viewerSign = hand.swing() == SwingWay.OUT ? 1 : -1;
        return new SwingAxes(
                Offset.inches(opening.east().inches() + fromStart * opening.directionEast()),
                Offset.inches(opening.north().inches() + fromStart * opening.directionNorth()),
                alongEast,
                alongNorth,
                viewerSign * outEast,
                viewerSign * outNorth,
                viewerSign);
    }

    /** Distance of a plan point from the pin axis towards the latch. */
    double along(double eastIn, double northIn) {
        return (eastIn - pinEast.inches()) * alongEast + (northIn - pinNorth.inches()) * alongNorth;
    }

    /** Distance of a plan point from the closed leaf to the swing side. */
    double side(double eastIn, double northIn) {
        return (eastIn - pinEast.inches()) * sideEast + (northIn - pinNorth.inches()) * sideNorth;
    }

    /** East of a point given by its distances along and to the swing side. */
    public Offset east(Offset along, Offset side) {
        return Offset.inches(pinEast.inches() + along.inches() * alongEast + side.inches() * sideEast);
    }

    /** North of a point given by its distances along and to the swing side. */
    public Offset north(Offset along, Offset side) {
        return Offset.inches(pinNorth.inches() + along.inches() * alongNorth + side.inches() * sideNorth);
    }
}
