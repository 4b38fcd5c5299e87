package plumbleaf.engine.job;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;

/**
 * A curve of a run, fenced by equal chords from post to post: as few as keep each chord within the longest bay and its middle within the sagitta of the curve,
 * {@code s = R - sqrt(R^2 - c^2/4)}, near {@code c^2 / 8R} for flat ones. The first chord leaves the direction before it by half the turn of a chord, and so
 * does what follows leave the last.
 * Source: plane geometry. Check: ArcTest.
 *
 * @param radius to the post centres
 * @param left the whole turn, positive to the left
 * @param sagitta most that the middle of a chord may lie off the curve
 */
public record Arc(Length radius, Angle left, Length sagitta) {
    /** A chord spans this much of a circle at most, however large the sagitta. */
    private static final double WIDEST = Math.PI / 2;

    /** How many chords it takes. */
    public int chords(Length longestBay) {
        double r = radius.inches();
        double bySagitta = 2 * StrictMath.acos(Math.max(-1, 1 - sagitta.inches() / r));
        double byBay = longestBay.inches() >= 2 * r ? Math.PI : 2 * StrictMath.asin(longestBay.inches() / (2 * r));
        double each = Math.min(WIDEST, Math.min(bySagitta, byBay));
        return (int) Math.max(1, Math.ceil(Math.abs(left.radians()) / each - 1e-9));
    }

    /** The chords, all alike. */
    public List<Leg> legs(Heading tangent, Length longestBay) {
        int count = chords(longestBay);
        Length chord = new Length(2 * radius.inches() * StrictMath.sin(Math.abs(left.radians()) / count / 2));
        List<Leg> legs = new ArrayList<>();
        for (int i = 0; i < count; i++)
            legs.add(new Leg(
                    chord,
                    i == 0 ? tangent : new Heading.Turn(Angle.ZERO),
                    Stated.of(Taped.LEVEL),
                    Stated.of(new ArcChord(this, i, count))));
        return legs;
    }

    /** How far the middle of each chord lies off the curve. */
    public Length off(int count) {
        return new Length(radius.inches() * (1 - StrictMath.cos(Math.abs(left.radians()) / count / 2)));
    }
}
