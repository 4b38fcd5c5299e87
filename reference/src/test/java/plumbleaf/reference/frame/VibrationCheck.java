package plumbleaf.reference.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.FrameModel;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.Stiffness;
import plumbleaf.engine.frame.Support;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.frame.Vibration;

/**
 * Lowest natural frequency of single beams against closed forms: cantilever, simple span, held at both ends, and a weight at the end of a light cantilever.
 *
 * Source: {@code f = b2 / (2 pi L2) sqrt(E I g / w)} with b2 3.516, 9.870, 22.373; {@code f = sqrt(3 E I g / (W L3)) / 2 pi}: Roark's Formulas for Stress and Strain, Table
 * of natural frequencies (from memory).
 * Tolerance: 0.5 %, since the mass lies at the ends of forty pieces; 1e-4 for the single weight beside a bar of a ten-millionth of it.
 */
class VibrationCheck {
    private static final double E = 29e6;
    private static final double I = 0.3734;
    private static final double LENGTH_IN = 72;
    private static final double LB_PER_IN = 2.11 / 12;
    private static final double GRAVITY = 386.0886;
    private static final int PIECES = 40;

    @ParameterizedTest
    @CsvSource({"cantilever,3.516", "simple,9.8696", "held,22.373"})
    void aBeamShakesAsByItsClosedForm(String how, double squared) {
        double closed = squared / (2 * Math.PI * LENGTH_IN * LENGTH_IN) * Math.sqrt(E * I * GRAVITY / LB_PER_IN);
        List<Support> supports = new ArrayList<>();
        List<Dof> all = List.of(Dof.values());
        List<Dof> simple = List.of(Dof.UX, Dof.UY, Dof.UZ, Dof.RX);
        supports.add(new Support("n0", how.equals("simple") ? simple : all));
        if (!how.equals("cantilever")) supports.add(new Support("n" + PIECES, how.equals("simple") ? simple : all));
        List<Load> weights = new ArrayList<>();
        for (int i = 0; i < PIECES; i++) weights.add(new Load.Uniform("m" + i, new Vector(0, 0, -LB_PER_IN)));
        assertThat(Vibration.lowest(beam(supports), new LoadCase("weight", weights))
                        .hertz())
                .isCloseTo(closed, within(0.005 * closed));
    }

    @Test
    void aWeightAtTheEndOfALightCantilever() {
        double pounds = 50;
        double closed = Math.sqrt(3 * E * I * GRAVITY / (pounds * Math.pow(LENGTH_IN, 3))) / (2 * Math.PI);
        LoadCase weight = LoadCase.of("weight", new Load.AtNode("n" + PIECES, new Vector(0, 0, -pounds)));
        FrameModel beam = beam(List.of(new Support("n0", List.of(Dof.values()))));
        assertThat(Vibration.lowest(beam, weight).hertz()).isCloseTo(closed, within(1e-4 * closed));
    }

    private static FrameModel beam(List<Support> supports) {
        List<Node> nodes = new ArrayList<>();
        List<Member> members = new ArrayList<>();
        Stiffness stiffness = Stiffness.alike(E, 11.2e6, 0.6187, I, 0.5971);
        for (int i = 0; i <= PIECES; i++) {
            nodes.add(new Node("n" + i, LENGTH_IN * i / PIECES, 0, 0));
            if (i > 0) members.add(Member.fixed("m" + (i - 1), "n" + (i - 1), "n" + i, stiffness, Vector.Z));
        }
        return FrameModel.of(nodes, members, supports);
    }
}
