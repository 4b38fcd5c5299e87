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
        return Force.pounds(felt(axial, shear, inPlane, outOfPlane, torsion).whole());
    }

    /**
     * What an inch feels where it feels most, lb/in.
     *
     * @param off the joint
     * @param sideways in its plane
     */
    record Felt(double off, double sideways) {
        double whole() {
            return Math.sqrt(off * off + sideways * sideways);
        }
    }

    Felt felt(double axial, double shear, double inPlane, double outOfPlane, double torsion) {
        return new Felt(
                Math.abs(axial) / areaIn() + Math.abs(inPlane) / inPlaneIn2() + Math.abs(outOfPlane) / acrossIn2(),
                Math.abs(shear) / areaIn() + Math.abs(torsion) * cornerIn() / polarIn3());
    }

    double areaIn() {
        return 2 * (width.inches() + depth.inches());
    }

    double inPlaneIn2() {
        return width.inches() * depth.inches() + depth.inches() * depth.inches() / 3;
    }

    double acrossIn2() {
        return width.inches() * depth.inches() + width.inches() * width.inches() / 3;
    }

    double polarIn3() {
        double half = width.inches() + depth.inches();
        return half * half * half / 6;
    }

    /** From the middle. */
    double cornerIn() {
        return Math.sqrt(width.inches() * width.inches() + depth.inches() * depth.inches()) / 2;
    }
}
