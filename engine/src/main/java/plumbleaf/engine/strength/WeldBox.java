package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/**
 * A weld all round the end of a tube, taken as a line of no width.
 *
 * @param depth d, in the plane of the frame
 * @param width b, across it
 */
public record WeldBox(Length depth, Length width) {
    /**
     * Greatest force on an inch, on the safe side where corners do not carry all at once: with {@code A = 2 (b + d)}, {@code S = b d + d2/3} in the plane,
     * {@code b d + b2/3} across it, {@code J = (b + d)3/6} and the corner at half the diagonal: off {@code N/A + Mi/Si + Mo/So}, sideways {@code V/A + T c/J}.
     * Source: elastic method, welds as lines: Blodgett, Design of Welded Structures; AISC Manual part 8 (from memory). Check: WeldLinesCheck.
     */
    public Force perInch(double axial, double shear, double inPlane, double outOfPlane, double torsion) {
        double d = depth.inches();
        double b = width.inches();
        double area = 2 * (b + d);
        double polar = (b + d) * (b + d) * (b + d) / 6;
        double off = Math.abs(axial) / area
                + Math.abs(inPlane) / (b * d + d * d / 3)
                + Math.abs(outOfPlane) / (b * d + b * b / 3);
        double sideways = Math.abs(shear) / area + Math.abs(torsion) * Math.sqrt(b * b + d * d) / 2 / polar;
        return Force.pounds(Math.sqrt(off * off + sideways * sideways));
    }
}
