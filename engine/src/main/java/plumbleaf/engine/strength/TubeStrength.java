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
        double depthIn = (aboutY ? section.width() : section.depth()).inches();
        double widthIn = (aboutY ? section.depth() : section.width()).inches();
        return tubeBending(
                section,
                depthIn,
                widthIn,
                aboutY ? section.iyIn4() : section.ixIn4(),
                aboutY ? section.syIn3() : section.sxIn3(),
                aboutY ? section.zyIn3() : section.zxIn3());
    }

    /**
     * Round: {@code Fy Z} while D/t is at most 0.07 E/Fy; {@code (0.021 E / (D/t) + Fy) S} to 0.31 E/Fy; beyond, {@code 0.33 E / (D/t) S}.
     * Good to D/t of 0.45 E/Fy. Source: AISC 360-22 F8. Check: TubeStrengthCheck (S1).
     */
    private static Moment roundBending(Section section) {
        double fy = section.yieldStress().psi();
        double slender = section.depth().inches() / section.usedWall().inches();
        if (slender <= 0.07 * E_PSI / fy) return Moment.poundInches(fy * section.zxIn3());
        if (slender <= 0.31 * E_PSI / fy) return Moment.poundInches((0.021 * E_PSI / slender + fy) * section.sxIn3());
        return Moment.poundInches(0.33 * E_PSI / slender * section.sxIn3());
    }

    /**
     * Square and rectangular: {@code Fy Z}, reduced where the flange (flat width less 3 t) is beyond 1.12 sqrt(E/Fy) or the web beyond
     * 2.42 sqrt(E/Fy); a flange beyond 1.40 sqrt(E/Fy) counts with its effective width. Source: AISC 360-22 F7. Check: TubeStrengthCheck (S2, S3, S10).
     */
    private static Moment tubeBending(
            Section section, double depthIn, double widthIn, double iIn4, double sIn3, double zIn3) {
        double fy = section.yieldStress().psi();
        double t = section.usedWall().inches();
        double root = Math.sqrt(E_PSI / fy);
        double flange = (widthIn - 3 * t) / t;
        double web = (depthIn - 3 * t) / t;
        double plastic = fy * zIn3;
        double elastic = fy * sIn3;
        double least = plastic;
        if (flange > 1.40 * root) least = fy * effectiveModulus(depthIn, iIn4, t, flange, root);
        else if (flange > 1.12 * root)
            least = Math.min(least, plastic - (plastic - elastic) * (3.57 * flange / root - 4.0));
        if (web > 2.42 * root) least = Math.min(least, plastic - (plastic - elastic) * (0.305 * web / root - 0.738));
        return Moment.poundInches(least);
    }

    /** The middle of both flanges beyond the effective width is left out, F7-4; from both, as the printed example does. */
    private static double effectiveModulus(double depthIn, double iIn4, double t, double flange, double root) {
        double flatIn = flange * t;
        double effectiveIn = Math.min(flatIn, 1.92 * t * root * (1 - 0.38 / flange * root));
        double armIn = (depthIn - t) / 2;
        double left = iIn4 - 2 * (flatIn - effectiveIn) * t * armIn * armIn;
        return 2 * left / depthIn;
    }

    /**
     * Round {@code Fcr A / 2}, Fcr 0.6 Fy or the buckling stress {@code 0.78 E / (D/t)^1.5}; tube {@code 0.6 Fy 2 (H - 3t) t Cv2}.
     * Source: AISC 360-22 G4 and G5. Check: TubeStrengthCheck (S8, S9).
     */
    private static Force shear(Section section) {
        double fy = section.yieldStress().psi();
        double t = section.usedWall().inches();
        double d = section.depth().inches();
        if (section.isRound()) {
            double slender = d / t;
            double critical = Math.min(0.6 * fy, 0.78 * E_PSI / (slender * Math.sqrt(slender)));
            return Force.pounds(critical * section.areaIn2() / 2);
        }
        double flat = d - 3 * t;
        return Force.pounds(0.6 * fy * 2 * flat * t * webBuckling(flat / t, fy));
    }

    private static double webBuckling(double slender, double fy) {
        double limit = Math.sqrt(5 * E_PSI / fy);
        if (slender <= 1.10 * limit) return 1;
        if (slender <= 1.37 * limit) return 1.10 * limit / slender;
        return 1.51 * 5 * E_PSI / (slender * slender * fy);
    }

    /**
     * {@code Fcr C}. Round: C = pi (D - t)2 t / 2, Fcr the lesser of 0.6 Fy and {@code 0.60 E / (D/t)^1.5}. Tube:
     * C = 2 (B - t)(H - t) t - 4.5 (4 - pi) t3, Fcr 0.6 Fy to h/t of 2.45 sqrt(E/Fy), less beyond.
     * Source: AISC 360-22 H3.1. Check: TubeStrengthCheck (S5).
     */
    private static Moment torsion(Section section) {
        double fy = section.yieldStress().psi();
        double t = section.usedWall().inches();
        double d = section.depth().inches();
        if (section.isRound()) {
            double slender = d / t;
            double critical = Math.min(0.6 * fy, 0.60 * E_PSI / (slender * Math.sqrt(slender)));
            return Moment.poundInches(critical * Math.PI * (d - t) * (d - t) * t / 2);
        }
        double longest = Math.max(d, section.width().inches());
        return Moment.poundInches(tubeTorsionStress((longest - 3 * t) / t, fy)
                * torsionConstantIn3(section.depth(), section.width(), section.usedWall()));
    }

    private static double tubeTorsionStress(double slender, double fy) {
        double root = Math.sqrt(E_PSI / fy);
        if (slender <= 2.45 * root) return 0.6 * fy;
        if (slender <= 3.07 * root) return 0.6 * fy * 2.45 * root / slender;
        return 0.458 * Math.PI * Math.PI * E_PSI / (slender * slender);
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
