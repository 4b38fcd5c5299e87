package plumbleaf.engine.strength;

import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.section.Section;

/**
 * How thin the walls of a square or rectangular tube are that is bent in its depth, and what it keeps of its strength: the walls across the depth are its flanges,
 * those along it its webs, each flat over the outside less three walls. Strengths are nominal.
 * Source: AISC 360-22 B4.1b, F7, G4, H3.1. Check: TubeStrengthCheck (S2, S3, S9, S10).
 */
final class FlatWalls {
    private static final double FLANGE_COMPACT = 1.12;
    private static final double FLANGE_NONCOMPACT = 1.40;
    private static final double WEB_COMPACT = 2.42;
    private static final double WEB_SHEARS_WHOLE = 1.10;
    private static final double WEB_BUCKLES = 1.37;
    private static final double TWISTS_WHOLE = 2.45;
    private static final double TWIST_BUCKLES = 3.07;
    private static final double E_PSI = Steel.ELASTIC_MODULUS.psi();

    private final Section section;
    private final double fy;
    private final double wall;
    private final double depth;
    private final double flangeFlat;
    private final double webFlat;
    private final double root;

    private FlatWalls(Section section) {
        this.section = section;
        this.fy = section.yieldStress().psi();
        this.wall = section.usedWall().inches();
        this.depth = section.depth().inches();
        this.flangeFlat = section.width().inches() - 3 * wall;
        this.webFlat = depth - 3 * wall;
        this.root = Math.sqrt(E_PSI / fy);
    }

    static FlatWalls of(Section section) {
        return new FlatWalls(section);
    }

    /** {@code sqrt(E / Fy)}. */
    double root() {
        return root;
    }

    double flangeFlatIn() {
        return flangeFlat;
    }

    double webFlatIn() {
        return webFlat;
    }

    boolean flangeIsSlender() {
        return flangeFlat / wall > FLANGE_NONCOMPACT * root;
    }

    boolean flangeIsNoncompact() {
        return flangeFlat / wall > FLANGE_COMPACT * root && !flangeIsSlender();
    }

    boolean webIsNoncompact() {
        return webFlat / wall > WEB_COMPACT * root;
    }

    boolean isCompact() {
        return flangeFlat / wall <= FLANGE_COMPACT * root && !webIsNoncompact();
    }

    /** {@code Mp = Fy Z}, F7-1. */
    double plasticLbIn() {
        return fy * section.zxIn3();
    }

    private double lostToYieldLbIn() {
        return plasticLbIn() - fy * section.sxIn3();
    }

    /** A noncompact flange, F7-2. */
    double byFlangeLbIn() {
        return plasticLbIn() - lostToYieldLbIn() * (3.57 * flangeFlat / wall / root - 4.0);
    }

    /** A noncompact web, F7-6. */
    double byWebLbIn() {
        return plasticLbIn() - lostToYieldLbIn() * (0.305 * webFlat / wall / root - 0.738);
    }

    /** A slender flange counts so wide, F7-4. */
    double effectiveIn() {
        return Math.min(flangeFlat, 1.92 * wall * root * (1 - 0.38 / (flangeFlat / wall) * root));
    }

    /** The middle of both flanges beyond the effective width is left out; from both, as the printed example does. */
    double effectiveInertiaIn4() {
        double arm = (depth - wall) / 2;
        return section.ixIn4() - 2 * (flangeFlat - effectiveIn()) * wall * arm * arm;
    }

    /** A slender flange, F7-3. */
    double byEffectiveLbIn() {
        return fy * 2 * effectiveInertiaIn4() / depth;
    }

    /** The least of what holds. */
    double bendingLbIn() {
        double least = plasticLbIn();
        if (flangeIsSlender()) least = byEffectiveLbIn();
        else if (flangeIsNoncompact()) least = Math.min(least, byFlangeLbIn());
        return webIsNoncompact() ? Math.min(least, byWebLbIn()) : least;
    }

    /** {@code Cv2} of both webs, G2.2 with kv 5. */
    double webBuckling() {
        double slender = webFlat / wall;
        if (webShearsWhole()) return 1;
        if (webShearsNearlyWhole()) return WEB_SHEARS_WHOLE * shearRoot() / slender;
        return 1.51 * 5 * E_PSI / (slender * slender * fy);
    }

    private double shearRoot() {
        return Math.sqrt(5 * E_PSI / fy);
    }

    /** G2-9. */
    boolean webShearsWhole() {
        return webFlat / wall <= WEB_SHEARS_WHOLE * shearRoot();
    }

    /** G2-10, where it does not hold whole. */
    boolean webShearsNearlyWhole() {
        return webFlat / wall <= WEB_BUCKLES * shearRoot();
    }

    /** The longer flat side, which torsion asks for. */
    double longerFlatIn() {
        return Math.max(depth, section.width().inches()) - 3 * wall;
    }

    /** H3-3. */
    boolean twistsWhole() {
        return longerFlatIn() / wall <= TWISTS_WHOLE * root;
    }

    /** H3-4, where it does not twist whole. */
    boolean twistsNearlyWhole() {
        return longerFlatIn() / wall <= TWIST_BUCKLES * root;
    }

    /** {@code Fcr} in torsion, H3-3 to H3-5. */
    double torsionPsi() {
        double slender = longerFlatIn() / wall;
        if (twistsWhole()) return 0.6 * fy;
        if (twistsNearlyWhole()) return 0.6 * fy * TWISTS_WHOLE * root / slender;
        return 0.458 * Math.PI * Math.PI * E_PSI / (slender * slender);
    }

    /** {@code 0.6 Fy 2 h t Cv2}, G4-1. */
    Force shear() {
        return Force.pounds(0.6 * fy * 2 * webFlat * wall * webBuckling());
    }
}
