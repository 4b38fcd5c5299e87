package plumbleaf.reference.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbleaf.reference.frame.PlaneFrame.CASE;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Load;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Second-order moment and bend of a column by the engine's frame: the column is cut up, and what its weight does on the bent shape is put back as pushes at the kinks,
 * again and again until nothing changes.
 * Source: AISC 360-10 Commentary Figures C-C2.2 and C-C2.3, simple span (PD5 to PD8) and cantilever (PD1 to PD4), printed, flexure only.
 * Tolerance: 0.5 %, as the commentary asks.
 */
class BentShapeCheck {
    private static final int PARTS = 24;
    private static final int MOST_ROUNDS = 400;
    private static final double SAME = 1e-10;

    @ParameterizedTest
    @ValueSource(strings = {"PD1", "PD2", "PD3", "PD4", "PD5", "PD6", "PD7", "PD8"})
    void bendsAsPrinted(String id) {
        Vector vector = Vectors.one("strength", id);
        boolean span = vector.inputs().containsKey("w_kip_per_ft");
        FrameSolution bent = bent(vector, span);
        int at = span ? PARTS / 2 : PARTS;
        vector.check("delta_in", across(bent, at));
        double moment = span
                ? bent.internalAt(CASE, part(at), 0).mzLbIn()
                : bent.reaction(CASE, "0").momentLbIn().z();
        vector.check("M_kipin", Math.abs(moment));
    }

    private static FrameSolution bent(Vector vector, boolean span) {
        double[] kinks = new double[PARTS + 1];
        double step = vector.in("L_ft") * 12 / PARTS;
        double weight = vector.in("P_kip");
        for (int round = 0; round < MOST_ROUNDS; round++) {
            FrameSolution solved = solved(vector, span, step, kinks);
            double change = 0;
            for (int i = 0; i <= PARTS; i++) {
                // The weight runs along each part; where two parts meet at a kink it pushes the joint across.
                double before = i == 0 ? 0 : (across(solved, i) - across(solved, i - 1)) / step;
                double after = i == PARTS ? 0 : (across(solved, i + 1) - across(solved, i)) / step;
                double push = weight * (before - after);
                change = Math.max(change, Math.abs(push - kinks[i]));
                kinks[i] = push;
            }
            if (change < SAME) return solved;
        }
        throw new AssertionError(vector.id() + " does not come to rest");
    }

    private static FrameSolution solved(Vector vector, boolean span, double step, double[] kinks) {
        PlaneFrame column = new PlaneFrame();
        for (int i = 0; i <= PARTS; i++) column.node(Integer.toString(i), i * step, 0);
        for (int i = 0; i < PARTS; i++)
            column.beam(
                    part(i), Integer.toString(i), Integer.toString(i + 1), vector.in("E_ksi"), 1e6, vector.in("I_in4"));
        if (span) {
            column.pin("0").hold(Integer.toString(PARTS), Dof.UY);
            double perInch = vector.in("w_kip_per_ft") / 12;
            for (int i = 0; i < PARTS; i++)
                column.load(new Load.Uniform(part(i), new plumbleaf.engine.frame.Vector(0, perInch, 0)));
        } else {
            column.fix("0").load(Integer.toString(PARTS), 0, vector.in("H_kip"), 0);
        }
        for (int i = 0; i <= PARTS; i++) column.load(Integer.toString(i), 0, kinks[i], 0);
        FrameSolution solved = column.solved();
        assertThat(across(solved, PARTS / 2)).isFinite();
        return solved;
    }

    private static String part(int i) {
        return "part " + i;
    }

    private static double across(FrameSolution solved, int node) {
        return solved.motion(CASE, Integer.toString(node)).shiftIn().y();
    }
}
