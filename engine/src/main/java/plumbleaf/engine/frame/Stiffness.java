package plumbleaf.engine.frame;

import plumbleaf.engine.quantity.DecimalText;

/**
 * What resists the deformation of a prismatic member.
 *
 * @param ePsi modulus of elasticity
 * @param gPsi shear modulus, used for torsion alone
 * @param areaIn2 area of the section
 * @param iyIn4 second moment about the member's own y axis: bending that moves it along its z
 * @param izIn4 second moment about the member's own z axis: bending that moves it along its y
 * @param jIn4 torsion constant
 */
public record Stiffness(double ePsi, double gPsi, double areaIn2, double iyIn4, double izIn4, double jIn4) {
    public Stiffness {
        positive("E", ePsi);
        positive("G", gPsi);
        positive("area", areaIn2);
        positive("Iy", iyIn4);
        positive("Iz", izIn4);
        positive("J", jIn4);
    }

    /** A section with the same second moment all round: round or square tube. */
    public static Stiffness alike(double ePsi, double gPsi, double areaIn2, double iIn4, double jIn4) {
        return new Stiffness(ePsi, gPsi, areaIn2, iIn4, iIn4, jIn4);
    }

    public Stiffness times(double factor) {
        return new Stiffness(ePsi * factor, gPsi * factor, areaIn2, iyIn4, izIn4, jIn4);
    }

    private static void positive(String what, double value) {
        if (!(value > 0 && value <= Double.MAX_VALUE))
            throw new IllegalArgumentException(
                    "Stiffness " + what + " must be above 0, was " + DecimalText.shortest(value));
    }
}
