package plumbleaf.reference.section;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.material.Steel;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.TubeProperties;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Area, inertia, moduli, J and weight of pipes and tubes from their sizes.
 * Source: AISC Steel Construction Manual 16th ed. Part 1 (P1 to P8); verification pages of a pipe and a square tube (S4, S5); a rectangular tube (S6, from
 * memory); an open notebook to CSA S16 (S7).
 * Tolerance: 1 % for the Manual's rows (their walls are rounded), 0.01 to 0.2 % for the others.
 */
class TubePropertiesCheck {
    private static Length inches(Vector vector, String key) {
        return Length.inches(vector.in(key));
    }

    @ParameterizedTest
    @ValueSource(strings = {"P1", "P2", "P3", "P4"})
    void pipes(String id) {
        Vector row = Vectors.one("section", id);
        TubeProperties pipe = TubeProperties.round(inches(row, "OD_in"), inches(row, "t_des_in"));
        row.check("A_in2", pipe.areaIn2());
        row.check("I_in4", pipe.ixIn4());
        row.check("S_in3", pipe.sxIn3());
        row.check("Z_in3", pipe.zxIn3());
        row.check("r_in", Math.sqrt(pipe.ixIn4() / pipe.areaIn2()));
        TubeProperties nominal = TubeProperties.round(inches(row, "OD_in"), inches(row, "t_nom_in"));
        row.check("weight_lb_ft", nominal.areaIn2() * 12 * Steel.DENSITY.perCubicInch());
    }

    @ParameterizedTest
    @ValueSource(strings = {"P5", "P6", "P7", "P8"})
    void tubes(String id) {
        Vector row = Vectors.one("section", id);
        TubeProperties tube =
                TubeProperties.rectangular(inches(row, "H_in"), inches(row, "B_in"), inches(row, "t_des_in"));
        row.check("A_in2", tube.areaIn2());
        row.check("Ix_in4", tube.ixIn4());
        row.check("Sx_in3", tube.sxIn3());
        row.check("Zx_in3", tube.zxIn3());
        row.check("Iy_in4", tube.iyIn4());
        row.check("J_in4", tube.jIn4());
        TubeProperties nominal =
                TubeProperties.rectangular(inches(row, "H_in"), inches(row, "B_in"), inches(row, "t_nom_in"));
        row.check("weight_lb_ft", nominal.areaIn2() * 12 * Steel.DENSITY.perCubicInch());
    }

    @Test
    void pipeOnTheNominalWall() {
        Vector page = Vectors.one("section", "S4");
        TubeProperties pipe = TubeProperties.round(inches(page, "OD_in"), inches(page, "t_in"));
        page.check("A_in2", pipe.areaIn2());
        page.check("r_in", Math.sqrt(pipe.ixIn4() / pipe.areaIn2()));
    }

    @Test
    void tubesWithSharpCorners() {
        Vector square = Vectors.one("section", "S5");
        TubeProperties tube = TubeProperties.rectangular(
                inches(square, "H_in"), inches(square, "H_in"), inches(square, "t_in"), Length.ZERO);
        square.check("A_in2", tube.areaIn2());
        square.check("I_in4", tube.ixIn4());
        square.check("S_in3", tube.sxIn3());
        square.check("Z_in3", tube.zxIn3());
        Vector flat = Vectors.one("section", "S6");
        TubeProperties rectangular = TubeProperties.rectangular(
                inches(flat, "H_in"), inches(flat, "B_in"), inches(flat, "t_in"), Length.ZERO);
        flat.check("A_in2", rectangular.areaIn2());
    }

    @Test
    void pipeWithADesignWallOfNinetyPerCent() {
        Vector book = Vectors.one("section", "S7");
        Length wall = inches(book, "t_nom_in").times(book.in("design_wall_factor"));
        TubeProperties pipe = TubeProperties.round(inches(book, "OD_in"), wall);
        book.check("S_in3", pipe.sxIn3());
        book.check("Z_in3", pipe.zxIn3());
    }
}
