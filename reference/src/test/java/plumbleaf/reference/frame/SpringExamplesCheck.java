package plumbleaf.reference.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbleaf.reference.frame.PlaneFrame.CASE;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.FrameModel;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Frames;
import plumbleaf.engine.frame.GroundSpring;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Motion;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.SpringMatrix;
import plumbleaf.engine.frame.Support;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.frame.Wrench;

/**
 * Springs between nodes and to the ground, supports that settle, and the coupled spring of a rigid pier in elastic ground.
 *
 * Source: rows T6, SP1 to SP4 and R1 to R4 of frame-examples.csv: Logan, Example 2.1; McGuire, Gallagher, Ziemian 2e, Example 4.15; Sennett,
 * Example 7.2 and Section 3.8; Kassimali, Structural Analysis 3e, Example 13.14; for the pier closed forms from statics, as in Broms 1964
 * (from memory).
 * Tolerance: each row's own, from 0.001 to 0.1 %; 7.6 % for SP4, whose printed reaction at A carries the rounding of large opposing
 * numbers, with its exact values to 0.1 %.
 */
class SpringExamplesCheck {
    @Test
    void loganSpringsInSeries() {
        PlaneFrame frame = new PlaneFrame().load("4", 5000, 0, 0).pin("1").pin("2");
        for (String node : List.of("1", "2", "3", "4")) frame.node(node, 0, 0).hold(node, Dof.UY, Dof.RZ);
        FrameSolution solved = frame.spring("k1", "1", "3", 1000)
                .spring("k2", "3", "4", 2000)
                .spring("k3", "4", "2", 3000)
                .solved();
        WorkedExample.of("T6")
                .meets("u3", solved.motion(CASE, "3").shiftIn().x())
                .meets("u4", solved.motion(CASE, "4").shiftIn().x())
                .meets("R1", solved.reaction(CASE, "1").forceLb().x())
                .meets("R2", solved.reaction(CASE, "2").forceLb().x())
                .everyValueWasMet();
    }

    @Test
    void mcGuireBeamOnSprings() {
        PlaneFrame frame = new PlaneFrame().load("8", 0, -40, 0).pin("0").hold("16", Dof.UY);
        for (int i = 0; i <= 16; i++) frame.node("" + i, 15 * i, 0);
        for (int i = 0; i < 16; i++) frame.beam("m" + i, "" + i, "" + (i + 1), 29000, 10, 128.5);
        for (int i = 1; i < 16; i++) frame.ground("" + i, Dof.UY, 22.5);
        WorkedExample.of("SP1")
                .meets("M_mid_kipin", frame.solved().internalAt(CASE, "m7", 15).mzLbIn())
                .everyValueWasMet();
    }

    @Test
    void sennettElasticMiddleSupport() {
        FrameSolution solved = new PlaneFrame()
                .node("a", 0, 0)
                .node("m", 120, 0)
                .node("b", 240, 0)
                .beam("am", "a", "m", 29e6, 10, 100)
                .beam("mb", "m", "b", 29e6, 10, 100)
                .fix("a")
                .fix("b")
                .ground("m", Dof.UY, 20000)
                .load(new Load.Uniform("mb", new Vector(0, -1000 / 12.0, 0)))
                .solved();
        WorkedExample.of("SP2")
                .meets("v_mid_in", solved.motion(CASE, "m").shiftIn().y())
                .meets(
                        "rot_mid_abs_rad",
                        Math.abs(solved.motion(CASE, "m").turnRad().z()))
                .everyValueWasMet();
    }

    @Test
    void sennettSettlement() {
        FrameSolution solved = new PlaneFrame()
                .node("a", 0, 0)
                .node("m", 120, 0)
                .node("b", 240, 0)
                .beam("am", "a", "m", 2.9e6, 1, 1)
                .beam("mb", "m", "b", 2.9e6, 1, 1)
                .fix("a")
                .hold("m", Dof.UY)
                .hold("b", Dof.UY)
                .load(new Load.Settlement("m", Dof.UY, -0.25))
                .solved();
        Wrench first = solved.endForces(CASE, "am").start();
        Wrench second = solved.endForces(CASE, "mb").start();
        WorkedExample.of("SP3")
                .meets("V1_lb", first.forceLb().y())
                .meets("M1_abs_lbin", Math.abs(first.momentLbIn().z()))
                .meets("V2_lb", second.forceLb().y())
                .meets("M2_abs_lbin", Math.abs(second.momentLbIn().z()))
                .everyValueWasMet();
    }

    @Test
    void kassimaliContinuousBeamWithSettlements() {
        PlaneFrame frame = new PlaneFrame().hold("A", Dof.UX);
        List<String> names = List.of("A", "B", "C", "D");
        double[] settled = {0, -0.625, -1.5, -0.75};
        for (int i = 0; i < 4; i++) {
            frame.node(names.get(i), 240 * i, 0)
                    .hold(names.get(i), Dof.UY)
                    .load(new Load.Settlement(names.get(i), Dof.UY, settled[i]));
        }
        for (int i = 0; i < 3; i++)
            frame.beam("m" + i, names.get(i), names.get(i + 1), 29000, 10, 7800)
                    .load(new Load.Uniform("m" + i, new Vector(0, -2 / 12.0, 0)));
        FrameSolution solved = frame.solved();
        WorkedExample printed = WorkedExample.of("SP4");
        double[] exact = {-1.181, 122.542, -61.540, 60.180};
        for (int i = 0; i < 4; i++) {
            double reaction = solved.reaction(CASE, names.get(i)).forceLb().y();
            printed.meets(names.get(i) + "_kip", reaction);
            assertThat(reaction).isCloseTo(exact[i], within(0.001 * Math.abs(exact[i])));
        }
        printed.everyValueWasMet();
    }

    @Test
    void rigidPierInGroundOfConstantModulus() {
        double kd = 100 * 12;
        SpringMatrix pier = pier(kd * 36, kd * 36 * 36 / 2, kd * 36 * 36 * 36 / 3);
        pierMeets("R1", pier, 50, 2400);
        pierMeets("R3", pier, 0, 4050);
    }

    @Test
    void rigidPierInGroundThatStiffensWithDepth() {
        pierMeets("R2", pier(25 * 648, 25 * 15552, 25 * 419904), 50, 2400);
        pierMeets("R4", pier(24.3 * 648, 24.3 * 15552, 24.3 * 419904), 0, 4050);
    }

    /** Pushed along x at grade, turning about y; down is -z, so the ground below pushes the foot back the other way: coupling is negative. */
    private static SpringMatrix pier(double shift, double coupling, double turn) {
        return SpringMatrix.NONE
                .with(Dof.UX, Dof.UX, shift)
                .with(Dof.UX, Dof.RY, -coupling)
                .with(Dof.RY, Dof.RY, turn);
    }

    private static void pierMeets(String id, SpringMatrix pier, double push, double moment) {
        FrameModel model = new FrameModel(
                List.of(new Node("grade", 0, 0, 0)),
                List.of(),
                List.of(new GroundSpring("pier", "grade", pier)),
                List.of(),
                List.of(new Support("grade", List.of(Dof.UY, Dof.UZ, Dof.RX, Dof.RZ))));
        Motion moved = Frames.solve(
                        model,
                        LoadCase.of(CASE, new Load.AtNode("grade", new Vector(push, 0, 0), new Vector(0, moment, 0))))
                .motion(CASE, "grade");
        WorkedExample.of(id)
                .meets("theta_rad", moved.turnRad().y())
                .meets("y0_in", moved.shiftIn().x())
                .everyValueWasMet();
    }
}
