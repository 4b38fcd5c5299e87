package plumbleaf.engine.action;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;

/**
 * What acts on a post at grade. Along the run + tips up-station (at a gate: towards the latch); across + towards the outside.
 *
 * @param down weight, + down
 * @param along push along the run
 * @param across push across it
 * @param momentAlong tips the post along the run
 * @param momentAcross tips it across
 * @param torsion turns it about its own axis, + in the swing direction
 */
public record BaseAction(
        Force down, Force along, Force across, Moment momentAlong, Moment momentAcross, Moment torsion) {
    public static final BaseAction NONE =
            new BaseAction(Force.ZERO, Force.ZERO, Force.ZERO, Moment.ZERO, Moment.ZERO, Moment.ZERO);

    /** A weight on the post's axis. */
    public static BaseAction weight(Force down) {
        return new BaseAction(down, Force.ZERO, Force.ZERO, Moment.ZERO, Moment.ZERO, Moment.ZERO);
    }

    /** A push across the run at a height: {@code M = F z}. */
    public static BaseAction across(Force push, Length height) {
        return new BaseAction(
                Force.ZERO,
                Force.ZERO,
                push,
                Moment.ZERO,
                Moment.poundInches(push.pounds() * height.inches()),
                Moment.ZERO);
    }

    /** A push along the run at a height. */
    public static BaseAction along(Force push, Length height) {
        return new BaseAction(
                Force.ZERO,
                push,
                Force.ZERO,
                Moment.poundInches(push.pounds() * height.inches()),
                Moment.ZERO,
                Moment.ZERO);
    }

    public BaseAction plus(BaseAction other) {
        return new BaseAction(
                down.plus(other.down),
                along.plus(other.along),
                across.plus(other.across),
                momentAlong.plus(other.momentAlong),
                momentAcross.plus(other.momentAcross),
                torsion.plus(other.torsion));
    }

    public BaseAction times(double factor) {
        return new BaseAction(
                down.times(factor),
                along.times(factor),
                across.times(factor),
                momentAlong.times(factor),
                momentAcross.times(factor),
                torsion.times(factor));
    }

    /** Vector sum of the two moments. */
    public Moment size() {
        double a = momentAlong.poundInches();
        double b = momentAcross.poundInches();
        return Moment.poundInches(Math.sqrt(a * a + b * b));
    }

    /** Vector sum of the two pushes. */
    public Force push() {
        double a = along.pounds();
        double b = across.pounds();
        return Force.pounds(Math.sqrt(a * a + b * b));
    }
}
