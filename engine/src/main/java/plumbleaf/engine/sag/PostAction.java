package plumbleaf.engine.sag;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Moment;

/**
 * What acts on a post at grade, about its own axis, in the gate's axes.
 *
 * @param pushAlong + towards +r (the latch of the closed leaf)
 * @param pushAcross + towards the outside
 * @param down + down, the post's own weight apart
 * @param along tips the post towards +r
 * @param across tips it towards the outside
 * @param torsion turns it in the swing direction
 */
public record PostAction(Force pushAlong, Force pushAcross, Force down, Moment along, Moment across, Moment torsion) {
    public static final PostAction NONE =
            new PostAction(Force.ZERO, Force.ZERO, Force.ZERO, Moment.ZERO, Moment.ZERO, Moment.ZERO);

    /** The two bending moments as one. */
    public Moment size() {
        double along2 = along.poundInches() * along.poundInches();
        double across2 = across.poundInches() * across.poundInches();
        return Moment.poundInches(Math.sqrt(along2 + across2));
    }

    /** The two pushes as one. */
    public Force push() {
        double along2 = pushAlong.pounds() * pushAlong.pounds();
        double across2 = pushAcross.pounds() * pushAcross.pounds();
        return Force.pounds(Math.sqrt(along2 + across2));
    }
}
