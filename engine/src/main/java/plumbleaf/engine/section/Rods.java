package plumbleaf.engine.section;

import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Stress;

/** Solid round steel rod, from its diameter alone. */
public final class Rods {
    private Rods() {}

    /**
     * A smooth round rod: a tube without a bore. Fy 36, Fu 58 ksi: ASTM A36 bar (from memory).
     * Check: TubePropertiesCheck by the same closed form.
     */
    public static Section round(Length diameter) {
        TubeProperties solid = TubeProperties.round(diameter, diameter.times(0.5));
        return new Section(
                "ROD-" + DecimalText.shortest(diameter.inches()),
                "rod",
                LengthText.inchesOnly(diameter.inches()) + " round rod",
                Shape.ROUND,
                diameter,
                diameter,
                diameter.times(0.5),
                diameter.times(0.5),
                diameter.times(0.5),
                Force.pounds(solid.areaIn2() * 12 * Steel.DENSITY.perCubicInch()),
                solid.areaIn2(),
                solid.ixIn4(),
                solid.sxIn3(),
                solid.zxIn3(),
                solid.iyIn4(),
                solid.syIn3(),
                solid.zyIn3(),
                solid.jIn4(),
                Stress.ksi(36),
                Stress.ksi(58),
                "memory",
                "closed form; Fy and Fu of ASTM A36 bar, from memory",
                "computed");
    }

    /**
     * Tension a rod may carry through its rolled or cut thread, ASD: {@code 0.75 Fu A / 2}, A the gross area of the shank.
     * Source: AISC 360-22 J3.7 and Table J3.2, threaded parts (from memory). Check: RodTest.
     */
    public static Force threadCapacity(Section rod) {
        return Force.pounds(0.75 * rod.ultimateStress().psi() * rod.areaIn2() / 2);
    }
}
