package plumbleaf.engine.strength;

import plumbleaf.engine.material.Steel;
import plumbleaf.engine.section.Section;

/**
 * How thin the wall of a pipe is by its {@code D/t}, and what stress it keeps.
 * Source: AISC 360-22 B4.1b, F8, G5, H3.1. Check: TubeStrengthCheck (S1, S5, S8).
 *
 * @param slender D/t, on the wall used
 * @param fy yield stress, psi
 */
record RoundWall(double slender, double fy) {
    private static final double COMPACT = 0.07;
    private static final double NONCOMPACT = 0.31;
    private static final double E_PSI = Steel.ELASTIC_MODULUS.psi();

    static RoundWall of(Section section) {
        return new RoundWall(
                section.depth().inches() / section.usedWall().inches(),
                section.yieldStress().psi());
    }

    boolean isCompact() {
        return slender <= COMPACT * E_PSI / fy;
    }

    boolean isNoncompact() {
        return slender <= NONCOMPACT * E_PSI / fy && !isCompact();
    }

    /** On the elastic section modulus, of a wall that is not compact: F8-2, or F8-3 where it is slender. Good to D/t of 0.45 E/Fy. */
    double bendingPsi() {
        return isNoncompact() ? 0.021 * E_PSI / slender + fy : 0.33 * E_PSI / slender;
    }

    /** Yield in shear, or buckling over a long free length: G5-2b. */
    double shearPsi() {
        return Math.min(0.6 * fy, bucklingPsi(0.78));
    }

    /** H3-2b. */
    double torsionPsi() {
        return Math.min(0.6 * fy, bucklingPsi(0.60));
    }

    private double bucklingPsi(double factor) {
        return factor * E_PSI / (slender * Math.sqrt(slender));
    }
}
