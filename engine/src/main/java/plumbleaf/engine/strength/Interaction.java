package plumbleaf.engine.strength;

import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

/** Axial force, bending both ways, shear and torsion on one tube together. */
public final class Interaction {
    /** Source: AISC 360-22 H3.2: torsion up to this share of its strength is left out. */
    private static final double TORSION_LEFT_OUT = 0.2;
    /** Source: AISC 360-22 H1.1. */
    private static final double LITTLE_AXIAL = 0.2;
    /** A post fixed at grade and free on top. Source: AISC 360-22 Table C-A-7.1. */
    private static final double CANTILEVER = 2.1;

    private Interaction() {}

    /**
     * Utilisation, above 1 fails. Round sections take the vector sum of the two moments, others the sum of their ratios (worst at 45 degrees). With
     * {@code Tr > 0.2 Tc}: {@code Pr/Pc + Mr/Mc + (Vr/Vc + Tr/Tc)2}, the full axial term; else {@code Pr/(2 Pc) + Mr/Mc}, or
     * {@code Pr/Pc + 8/9 Mr/Mc} from Pr/Pc = 0.2 up. Shear alone is never less.
     * Source: AISC 360-22 H1-1, H3-6, G1. Check: InteractionTest.
     *
     * @param action at the section, allowable-stress level
     * @param height free length of the post above it
     */
    public static double ratio(Section section, BaseAction action, Length height) {
        TubeStrength strength = TubeStrength.of(section);
        double bending = bendingRatio(section, strength, action);
        double axial = axialRatio(section, action, height);
        double shear = action.push().pounds() / strength.allowableShear().pounds();
        double torsion = Math.abs(action.torsion().poundInches())
                / strength.allowableTorsion().poundInches();
        if (torsion > TORSION_LEFT_OUT) return axial + bending + (shear + torsion) * (shear + torsion);
        double together = axial >= LITTLE_AXIAL ? axial + 8.0 / 9 * bending : axial / 2 + bending;
        return Math.max(together, shear);
    }

    /** What the terms of {@link #ratio} are divided by, for the calculation book: {@code Pc 20,101 lb, Mc 26,084 lb-in, Vc 5,020 lb, Tc 17,400 lb-in}. */
    public static String capacities(Section section, Length height) {
        TubeStrength strength = TubeStrength.of(section);
        double axialLb =
                TubeStrength.compression(section, height.times(CANTILEVER)).pounds() / TubeStrength.SAFETY;
        boolean alike = section.isRound() || strength.allowableX().compareTo(strength.allowableY()) == 0;
        return "Pc " + DecimalText.whole(axialLb) + " lb, Mc "
                + DecimalText.whole(strength.allowableX().poundInches())
                + (alike
                        ? ""
                        : " and " + DecimalText.whole(strength.allowableY().poundInches())) + " lb-in, Vc "
                + DecimalText.whole(strength.allowableShear().pounds()) + " lb, Tc "
                + DecimalText.whole(strength.allowableTorsion().poundInches()) + " lb-in";
    }

    /** The bending part alone. The depth of a rectangular post stands along the run. */
    static double bendingRatio(Section section, TubeStrength strength, BaseAction action) {
        double alongLbIn = Math.abs(action.momentAlong().poundInches());
        double acrossLbIn = Math.abs(action.momentAcross().poundInches());
        if (section.isRound())
            return Math.sqrt(alongLbIn * alongLbIn + acrossLbIn * acrossLbIn)
                    / strength.allowableX().poundInches();
        return alongLbIn / strength.allowableX().poundInches()
                + acrossLbIn / strength.allowableY().poundInches();
    }

    private static double axialRatio(Section section, BaseAction action, Length height) {
        double down = Math.max(0, action.down().pounds());
        if (down == 0) return 0;
        return down
                * TubeStrength.SAFETY
                / TubeStrength.compression(section, height.times(CANTILEVER)).pounds();
    }
}
