package plumbleaf.reference.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;
import plumbleaf.engine.section.TubeProperties;
import plumbleaf.engine.strength.TubeStrength;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Bending of compact, noncompact and slender tubes, compact pipe, shear, compression and the torsion constant.
 * Source: AISC Design Examples F.9B (S1), F.6 (S2), its Fy 50 run (S3), F.8B (S10), G.5 (S8), G.4 (S9), E.9 (S11); verification pages of a pipe (S4) and a
 * square tube (S5).
 * Tolerance: 0.05 to 0.5 %, from the printed digits (column tolerance of the table).
 */
class TubeStrengthCheck {
    private static double kipFeet(double poundInches) {
        return poundInches / 12_000;
    }

    @Test
    void compactPipe() {
        Vector vector = Vectors.one("strength", "S1");
        TubeProperties made =
                TubeProperties.round(Length.inches(vector.in("OD_in")), Length.inches(vector.in("t_des_in")));
        Section pipe = TestSections.section(
                Shape.ROUND,
                vector.in("OD_in"),
                vector.in("OD_in"),
                vector.in("t_des_in"),
                vector.in("Fy_ksi"),
                TestSections.printed(made, made.areaIn2(), made.sxIn3(), vector.in("Z_in3"), made.ixIn4()));
        TubeStrength strength = TubeStrength.of(pipe);
        vector.check("Mp_kipft", kipFeet(strength.bendingX().poundInches()));
        vector.check("Ma_kipft", kipFeet(strength.allowableX().poundInches()));
    }

    /** The wall follows from the printed b/t: 3.5 / (27.2 + 3). */
    private static Section smallTube(Vector vector, double sIn3) {
        double wall = 3.5 / (vector.in("b_over_t") + 3);
        TubeProperties made = TubeProperties.rectangular(Length.inches(3.5), Length.inches(3.5), Length.inches(wall));
        double s = sIn3 > 0 ? sIn3 : made.sxIn3();
        return TestSections.section(
                Shape.SQUARE,
                3.5,
                3.5,
                wall,
                vector.in("Fy_ksi"),
                TestSections.printed(made, made.areaIn2(), s, vector.in("Z_in3"), made.ixIn4()));
    }

    @Test
    void compactSquareTube() {
        Vector vector = Vectors.one("strength", "S2");
        TubeStrength strength = TubeStrength.of(smallTube(vector, 0));
        vector.check("phiMn_kipft", 0.9 * kipFeet(strength.bendingX().poundInches()));
        vector.check("Ma_kipft", kipFeet(strength.allowableX().poundInches()));
    }

    @Test
    void noncompactSquareTube() {
        Vector vector = Vectors.one("strength", "S3");
        TubeStrength strength = TubeStrength.of(smallTube(vector, vector.in("S_in3")));
        vector.check("phiMn_kipft", 0.9 * kipFeet(strength.bendingX().poundInches()));
        vector.check("Ma_kipft", kipFeet(strength.allowableX().poundInches()));
    }

    @Test
    void slenderSquareTube() {
        Vector vector = Vectors.one("strength", "S10");
        TubeProperties made =
                TubeProperties.rectangular(Length.inches(8), Length.inches(8), Length.inches(vector.in("t_des_in")));
        Section tube = TestSections.section(
                Shape.SQUARE,
                8,
                8,
                vector.in("t_des_in"),
                vector.in("Fy_ksi"),
                TestSections.printed(made, made.areaIn2(), made.sxIn3(), made.zxIn3(), vector.in("I_in4")));
        vector.check("Mn_kipft", kipFeet(TubeStrength.of(tube).bendingX().poundInches()));
    }

    @Test
    void shearOfAPipeAndATube() {
        Vector round = Vectors.one("strength", "S8");
        TubeProperties made = TubeProperties.round(Length.inches(16), Length.inches(0.349));
        Section pipe = TestSections.section(
                Shape.ROUND,
                16,
                16,
                0.349,
                round.in("Fy_ksi"),
                TestSections.printed(made, round.in("Ag_in2"), made.sxIn3(), made.zxIn3(), made.ixIn4()));
        round.check("Vn_kip", TubeStrength.of(pipe).shear().pounds() / 1000);
        Vector rectangular = Vectors.one("strength", "S9");
        Section tube = TestSections.tube(6, 4, rectangular.in("t_des_in"), rectangular.in("Fy_ksi"));
        rectangular.check("Vn_kip", TubeStrength.of(tube).shear().pounds() / 1000);
    }

    @Test
    void compressionOfAPipeAndATube() {
        Vector round = Vectors.one("strength", "S4");
        Section pipe = TestSections.round(round.in("OD_in"), round.in("t_in"), round.in("Fy_ksi"));
        round.check(
                "Pn_kip",
                TubeStrength.compression(pipe, Length.feet(round.in("L_ft"))).pounds() / 1000);
        Vector tube = Vectors.one("strength", "S11");
        double area = tube.in("A_in2");
        double r = tube.in("ry_in");
        TubeProperties made = TubeProperties.rectangular(Length.inches(12), Length.inches(10), Length.inches(0.349));
        TubeProperties printed = TestSections.printed(made, area, made.sxIn3(), made.zxIn3(), area * r * r);
        Section section = TestSections.section(Shape.RECTANGULAR, 12, 10, 0.349, tube.in("Fy_ksi"), printed);
        tube.check(
                "phiPn_kip",
                0.9
                        * TubeStrength.compression(section, Length.inches(tube.in("KL_in")))
                                .pounds()
                        / 1000);
    }

    /** Printed in the square tube example: 35.47 in3. */
    @Test
    void torsionConstant() {
        Vector vector = Vectors.one("section", "S5");
        double constant = TubeStrength.torsionConstantIn3(
                Length.inches(vector.in("H_in")), Length.inches(vector.in("H_in")), Length.inches(vector.in("t_in")));
        vector.check("C_in3", constant);
        assertThat(constant).isCloseTo(35.47, within(0.005));
    }
}
