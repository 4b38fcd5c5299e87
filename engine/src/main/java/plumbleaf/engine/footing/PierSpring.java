package plumbleaf.engine.footing;

import java.util.function.Function;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Offset;

/**
 * What a rigid pier in elastic soil gives at grade in one plane, as a full matrix: {@code H = a y + c t, M = c y + b t}, with H and M pushing and
 * tipping the same way, y that way, t turning the top that way. The coupling c is negative: its rotation term alone is 4 to 9 times too stiff.
 *
 * @param lateralLbPerIn a
 * @param couplingLb c
 * @param rotationalLbIn b, per radian
 */
public record PierSpring(double lateralLbPerIn, double couplingLb, double rotationalLbIn) implements BaseSpring {
    public PierSpring {
        if (!(lateralLbPerIn > 0 && lateralLbPerIn * rotationalLbIn > couplingLb * couplingLb))
            throw new IllegalArgumentException("A pier's spring must resist every movement");
    }

    /** A round pier is alike in both planes; it neither sinks nor twists. */
    @Override
    public <T> T match(Function<PierSpring, T> pier, Function<Planes, T> planes, Function<Wall, T> wall) {
        return pier.apply(this);
    }

    @Override
    public PierSpring across() {
        return this;
    }

    /** How the pier stands at grade under a push and a moment there. */
    public record Motion(Offset sideways, Angle turn) {}

    /** The movement at grade under a push H and a moment M, both at grade: the matrix turned round. Check: PierCheck (R1 to R4). */
    public Motion under(Force push, Moment moment) {
        double determinant = lateralLbPerIn * rotationalLbIn - couplingLb * couplingLb;
        double h = push.pounds();
        double m = moment.poundInches();
        double sidewaysIn = (rotationalLbIn * h - couplingLb * m) / determinant;
        double turnRad = (lateralLbPerIn * m - couplingLb * h) / determinant;
        return new Motion(Offset.inches(sidewaysIn), Angle.radians(turnRad));
    }

    /** The same pier, all its soil weaker or stronger. */
    public PierSpring times(double factor) {
        return new PierSpring(lateralLbPerIn * factor, couplingLb * factor, rotationalLbIn * factor);
    }

    /** Read at a level that is {@code upIn} inches above the one this spring is given at. */
    PierSpring seenFromAbove(double upIn) {
        return new PierSpring(
                lateralLbPerIn,
                couplingLb - upIn * lateralLbPerIn,
                rotationalLbIn - 2 * upIn * couplingLb + upIn * upIn * lateralLbPerIn);
    }
}
