package plumbleaf.engine.strength;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.WorkedLine;
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
        return "Pc " + DecimalText.whole(axialLb) + " lb, Mc "
                + DecimalText.whole(strength.allowableX().poundInches())
                + (strength.bendsAlike()
                        ? ""
                        : " and " + DecimalText.whole(strength.allowableY().poundInches())) + " lb-in, Vc "
                + DecimalText.whole(strength.allowableShear().pounds()) + " lb, Tc "
                + DecimalText.whole(strength.allowableTorsion().poundInches()) + " lb-in";
    }

    /**
     * {@link #ratio} line by line, for the calculation book. Of a member held at both ends {@code height} is its length over 2.1, and K prints 1.
     *
     * @param cantilever whether it is a post, fixed at grade and free on top
     */
    public static List<WorkedLine> lines(Section section, BaseAction action, Length height, boolean cantilever) {
        TubeStrength strength = TubeStrength.of(section);
        List<WorkedLine> lines = new ArrayList<>();
        double axial = axialRatio(section, action, height);
        double down = Math.max(0, action.down().pounds());
        if (axial > 0) {
            List<WorkedLine> pressed = cantilever
                    ? TubeLines.compression(section, CANTILEVER, height)
                    : TubeLines.compression(section, 1, height.times(CANTILEVER));
            lines.addAll(pressed);
            lines.add(WorkedLine.of("axial", "Pr / Pc")
                    .put("Pr", down, "lb")
                    .put(pressed.get(2))
                    .gives(axial));
        }
        double bending = bendingRatio(section, strength, action);
        lines.add(bent(section, strength, action, bending));
        double shear = action.push().pounds() / strength.allowableShear().pounds();
        lines.add(WorkedLine.of("shear", "Vr / Vc")
                .put("Vr", action.push())
                .put("Vc", strength.allowableShear())
                .gives(shear));
        double torsion = Math.abs(action.torsion().poundInches())
                / strength.allowableTorsion().poundInches();
        if (torsion > 0)
            lines.add(WorkedLine.of("torsion", "Tr / Tc")
                    .put("Tr", Math.abs(action.torsion().poundInches()), "lb-in")
                    .put("Tc", strength.allowableTorsion().poundInches(), "lb-in")
                    .gives(torsion));
        lines.add(together(axial, bending, shear, torsion).gives(ratio(section, action, height)));
        return List.copyOf(lines);
    }

    private static WorkedLine bent(Section section, TubeStrength strength, BaseAction action, double bending) {
        boolean alike = strength.bendsAlike();
        String formula =
                section.isRound() ? "sqrt(Mx\u00b2 + My\u00b2) / Mc" : alike ? "(Mx + My) / Mc" : "Mx / Mcx + My / Mcy";
        WorkedLine.Open line = WorkedLine.of("bending", formula)
                .put("Mx", Math.abs(action.momentAlong().poundInches()), "lb-in")
                .put("My", Math.abs(action.momentAcross().poundInches()), "lb-in")
                .put(alike ? "Mc" : "Mcx", strength.allowableX().poundInches(), "lb-in");
        if (!alike) line.put("Mcy", strength.allowableY().poundInches(), "lb-in");
        return line.gives(bending);
    }

    /** The equation that holds for these shares. */
    private static WorkedLine.Open together(double axial, double bending, double shear, double torsion) {
        if (torsion > TORSION_LEFT_OUT)
            return WorkedLine.of("ratio", (axial > 0 ? "axial + " : "") + "bending + (shear + torsion)\u00b2")
                    .putWhere(axial > 0, "axial", axial)
                    .put("bending", bending)
                    .put("shear", shear)
                    .put("torsion", torsion)
                    .note("H3-6, torsion over 0.2");
        boolean much = axial >= LITTLE_AXIAL;
        String both = axial == 0 ? "bending" : much ? "axial + 8 / 9 \u00d7 bending" : "axial / 2 + bending";
        return WorkedLine.of("ratio", "max(" + both + "; shear)")
                .putWhere(axial > 0, "axial", axial)
                .put("bending", bending)
                .put("shear", shear)
                .note(much ? "H1-1a" : "H1-1b");
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
