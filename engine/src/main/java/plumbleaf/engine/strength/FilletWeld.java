package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;

/**
 * A fillet weld and the walls it lies on, per inch of length where not said otherwise; the thinner wall caps it.
 *
 * @param leg w
 * @param electrode Fexx
 */
public record FilletWeld(Length leg, Stress electrode) {
    /** Omega of fillets and of shear rupture. Source: AISC 360-22 J2.4, J4.2. */
    public static final double SAFETY = 2.0;

    /** Nominal weld metal per inch: {@code 0.60 Fexx 0.707 w}. Source: AISC 360-22 J2.4. Check: FilletWeldCheck (CX13, S12, S13). */
    public Force nominalPerInch() {
        return Force.pounds(0.60 * electrode.psi() * Math.sqrt(0.5) * leg.inches());
    }

    /**
     * More for a load across the weld: {@code 1 + 0.5 sin^1.5(angle)}, only where all welds of a group strain alike, and never at the ends of a rectangular
     * tube in tension (there 1). Source: AISC 360-22 J2.4. Check: FilletWeldCheck (S12).
     */
    public static double directionFactor(double angleDeg) {
        double sine = StrictMath.sin(StrictMath.toRadians(angleDeg));
        return 1 + 0.5 * sine * Math.sqrt(sine);
    }

    /** Nominal shear rupture of a wall beside the weld, per inch: {@code 0.60 Fu t}. Source: AISC 360-22 J4.2(b). Check: FilletWeldCheck (CX13). */
    public static Force wallPerInch(Stress ultimate, Length wall) {
        return Force.pounds(0.60 * ultimate.psi() * wall.inches());
    }

    /** What an inch may carry: weld or thinner wall, whichever is less. */
    public Force allowablePerInch(Stress ultimate, Length thinnerWall) {
        Force weld = nominalPerInch();
        Force wall = wallPerInch(ultimate, thinnerWall);
        return (weld.compareTo(wall) < 0 ? weld : wall).times(1 / SAFETY);
    }

    /**
     * Nominal strength of the sheet along a fillet, for tube that is sold to no tube standard: {@code (1 - 0.01 L/t) t L Fu} below L/t of 25, else
     * {@code 0.75 t L Fu}. Source: NSR-10 F.4.5.2, the adoption of AISI S100. Check: FilletWeldCheck (CX14, CX15).
     */
    public static Force sheetAlong(Length length, Length wall, Stress ultimate) {
        double slender = length.inches() / wall.inches();
        double factor = slender < 25 ? 1 - 0.01 * slender : 0.75;
        return Force.pounds(factor * wall.inches() * length.inches() * ultimate.psi());
    }

    /** Omega of the sheet beside a short and a long fillet. Source: AISI S100 E2.4 (from memory). */
    private static final double SAFETY_SHEET_SHORT = 2.55;

    private static final double SAFETY_SHEET_LONG = 3.05;

    /** What an inch of sheet along a fillet may carry in allowable-stress design. Source: as {@link #sheetAlong}. */
    public static Force allowableSheetAlong(Length length, Length wall, Stress ultimate) {
        double safety = length.inches() / wall.inches() < 25 ? SAFETY_SHEET_SHORT : SAFETY_SHEET_LONG;
        return sheetAlong(length, wall, ultimate).times(1 / (safety * length.inches()));
    }

    /** Across the load: {@code t L Fu}. Source: NSR-10 F.4.5.2. Check: FilletWeldCheck (CX16). */
    public static Force sheetAcross(Length length, Length wall, Stress ultimate) {
        return Force.pounds(wall.inches() * length.inches() * ultimate.psi());
    }

    /** Flare-bevel across: {@code 0.833 t L Fu}. Source: NSR-10 F.4.5.2. Check: FilletWeldCheck (CX16). */
    public static Force sheetFlare(Length length, Length wall, Stress ultimate) {
        return Force.pounds(0.833 * wall.inches() * length.inches() * ultimate.psi());
    }

    /** Weld metal of a fillet on sheet over 0.10 in.: {@code 0.75 tw L Fxx}, tw the throat. Source: NSR-10 F.4.5.2. Check: FilletWeldCheck (CX15). */
    public Force sheetWeldMetal(Length length) {
        return Force.pounds(0.75 * Math.sqrt(0.5) * leg.inches() * length.inches() * electrode.psi());
    }
}
