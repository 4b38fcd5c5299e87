package plumbleaf.engine.strength;

import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.section.Section;

/**
 * Nominal strengths of a pipe or tube; divide by {@link #SAFETY} for the allowable one. Stiffness and bending count on the wall used.
 *
 * @param bendingX about x, in the depth
 * @param bendingY about y
 * @param shear in the depth
 * @param torsion about its axis
 */
public record TubeStrength(Moment bendingX, Moment bendingY, Force shear, Moment torsion) {
    /** Omega for bending, shear, torsion and compression of pipe and tube. Source: AISC 360-22 F1, G1, H3.1, E1. */
    public static final double SAFETY = 1.67;

    private static final double E_PSI = Steel.ELASTIC_MODULUS.psi();

    public static TubeStrength of(Section section) {
        return new TubeStrength(bending(section, false), bending(section, true), shear(section), torsion(section));
    }

    public Moment allowableX() {
        return bendingX.times(1 / SAFETY);
    }

    public Moment allowableY() {
        return bendingY.times(1 / SAFETY);
    }

    /** Whether it bears as much bent across as in its depth. */
    boolean bendsAlike() {
        return bendingX.compareTo(bendingY) == 0;
    }

    /** The lesser of the two: what a post that may be loaded any way is worth. */
    public Moment allowableWeaker() {
        return bendingX.compareTo(bendingY) < 0 ? allowableX() : allowableY();
    }

    public Force allowableShear() {
        return shear.times(1 / SAFETY);
    }

    public Moment allowableTorsion() {
        return torsion.times(1 / SAFETY);
    }

    private static Moment bending(Section section, boolean aboutY) {
        if (section.isRound()) return roundBending(section);
        return Moment.poundInches(
                FlatWalls.of(aboutY ? section.turned() : section).bendingLbIn());
    }

    /**
     * Round: {@code Fy Z} while the wall is compact, else a lesser stress on S. Source: AISC 360-22 F8. Check: TubeStrengthCheck (S1).
     */
    private static Moment roundBending(Section section) {
        RoundWall wall = RoundWall.of(section);
        return Moment.poundInches(
                wall.isCompact() ? section.yieldStress().psi() * section.zxIn3() : wall.bendingPsi() * section.sxIn3());
    }

    /** Round {@code Fcr A / 2}; tube by its two webs. Source: AISC 360-22 G4 and G5. Check: TubeStrengthCheck (S8, S9). */
    private static Force shear(Section section) {
        if (section.isRound()) return Force.pounds(RoundWall.of(section).shearPsi() * section.areaIn2() / 2);
        return FlatWalls.of(section).shear();
    }

    /**
     * {@code Fcr C}. Round: C = pi (D - t)2 t / 2, Fcr the lesser of 0.6 Fy and {@code 0.60 E / (D/t)^1.5}. Tube:
     * C = 2 (B - t)(H - t) t - 4.5 (4 - pi) t3, Fcr 0.6 Fy to h/t of 2.45 sqrt(E/Fy), less beyond.
     * Source: AISC 360-22 H3.1. Check: TubeStrengthCheck (S5).
     */
    private static Moment torsion(Section section) {
        if (section.isRound()) {
            double t = section.usedWall().inches();
            double d = section.depth().inches();
            double critical = RoundWall.of(section).torsionPsi();
            return Moment.poundInches(critical * Math.PI * (d - t) * (d - t) * t / 2);
        }
        return Moment.poundInches(FlatWalls.of(section).torsionPsi()
                * torsionConstantIn3(section.depth(), section.width(), section.usedWall()));
    }

    /** C of a square or rectangular tube. Source: AISC 360-22 H3.1 user note. Check: TubeStrengthCheck (S5). */
    public static double torsionConstantIn3(Length depth, Length width, Length wall) {
        double t = wall.inches();
        return 2 * (width.inches() - t) * (depth.inches() - t) * t - 4.5 * (4 - Math.PI) * t * t * t;
    }

    /**
     * Nominal compression: {@code Fcr A}, {@code Fcr = 0.658^(Fy/Fe) Fy} while Fy/Fe is at most 2.25, else 0.877 Fe; Fe = pi2 E / (KL/r)2.
     * Slender walls are not reduced here: for posts that carry little more than their own weight.
     * Source: AISC 360-22 E3. Check: TubeStrengthCheck (S4, S11).
     *
     * @param effectiveLength K L
     */
    public static Force compression(Section section, Length effectiveLength) {
        Length least = section.rx().compareTo(section.ry()) < 0 ? section.rx() : section.ry();
        return Force.pounds(criticalPsi(section.yieldStress().psi(), effectiveLength.inches() / least.inches())
                * section.areaIn2());
    }

    static double criticalPsi(double fy, double slender) {
        if (slender <= 0) return fy;
        double euler = Math.PI * Math.PI * E_PSI / (slender * slender);
        return fy / euler <= 2.25 ? StrictMath.pow(0.658, fy / euler) * fy : 0.877 * euler;
    }
}
