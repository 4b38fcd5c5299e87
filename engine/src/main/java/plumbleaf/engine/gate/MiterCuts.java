package plumbleaf.engine.gate;

import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Slope;

/** Angles and lengths of the cuts in a frame of straight tube. All angles from square. */
public final class MiterCuts {
    private MiterCuts() {}

    /**
     * Cut of each of two members of one depth that meet in a miter: {@code 90 - corner / 2}. A square corner gives 45; a rail that climbs away from a plumb
     * stile at {@code a} closes the corner to 90 - a, so the cut is {@code 45 + a / 2}, and {@code 45 - a / 2} where it falls.
     * Holds for members of equal depth in the plane of the frame. Source: plane geometry, the cut halves the corner. Check: MiterCheck.
     *
     * @param corner angle between the members, as seen inside the frame
     */
    public static Angle miter(Angle corner) {
        return Angle.radians(Math.PI / 2 - corner.radians() / 2);
    }

    /** Corner between a plumb stile and a rail that leaves it at a grade; {@code railAbove} where the stile goes down from the corner. */
    static Angle corner(Slope railAwayFromStile, boolean railAbove) {
        double climb = railAwayFromStile.angle().radians();
        return Angle.radians(Math.PI / 2 + (railAbove ? climb : -climb));
    }

    /**
     * What a slanted cut adds to a piece beyond its centreline, at the long point: {@code depth / 2 x tan(cut)}; a piece with the same cut at both ends
     * gains {@code depth x tan a} in all. Holds for cuts below 90 degrees. Source: plane geometry. Check: MiterCheck.
     *
     * @param depth of the tube in the plane of the frame
     * @param cut from square
     */
    public static Length beyondCentreline(Length depth, Angle cut) {
        return Length.inches(depth.inches() / 2 * StrictMath.tan(Math.abs(cut.radians())));
    }

    /**
     * Length of the line round a slanted cut of a round tube: an ellipse with half axes R and {@code R / cos a}, by Ramanujan's second approximation
     * (error below 1e-6 here). Source: S. Ramanujan, Modular Equations and Approximations to Pi (1914), from memory. Check: MiterCheck.
     */
    public static Length ellipse(Length diameter, Angle cut) {
        double a = diameter.inches() / 2;
        double b = a / StrictMath.cos(cut.radians());
        double h = (a - b) * (a - b) / ((a + b) * (a + b));
        return Length.inches(Math.PI * (a + b) * (1 + 3 * h / (10 + Math.sqrt(4 - 3 * h))));
    }

    /**
     * Length of the line along which a round tube meets another of the same diameter square to it, summed over one thousand chords: points
     * {@code (sqrt(R2 - (R sin w)2), R cos w, R sin w)}. For equal tubes it is two half ellipses at 45 degrees. Check: MiterCheck.
     */
    public static Length saddle(Length diameter) {
        double radius = diameter.inches() / 2;
        int chords = 1000;
        double sum = 0;
        double beforeX = radius;
        double beforeY = radius;
        double beforeZ = 0;
        for (int i = 1; i <= chords; i++) {
            double w = 2 * Math.PI * i / chords;
            double z = radius * StrictMath.sin(w);
            double y = radius * StrictMath.cos(w);
            double x = Math.sqrt(Math.max(0, radius * radius - z * z));
            sum += Math.sqrt(
                    (x - beforeX) * (x - beforeX) + (y - beforeY) * (y - beforeY) + (z - beforeZ) * (z - beforeZ));
            beforeX = x;
            beforeY = y;
            beforeZ = z;
        }
        return Length.inches(sum);
    }
}
