package plumbleaf.reference.frame;

import static plumbleaf.reference.frame.PlaneFrame.CASE;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.FrameModel;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Frames;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Motion;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.Stiffness;
import plumbleaf.engine.frame.Support;
import plumbleaf.engine.frame.Vector;
import plumbleaf.engine.frame.Wrench;

/**
 * Displacements, reactions and end moments of plane and space frames.
 *
 * Source: rows FR1 to FR12 of frame-examples.csv: Kassimali, Matrix Analysis of Structures 2e, Example 6.6, and Structural Analysis, Example
 * 3.35; McGuire, Gallagher, Ziemian, Matrix Structural Analysis 2e, Examples 4.8, 4.12, 4.13; Logan, A First Course in the Finite Element
 * Method, Example 5.1 and Problem 5.30; Weaver, Computer Programs for Structural Analysis, page 146 problem 8; AFNOR test SSLL05; Hibbeler,
 * Structural Analysis, Example 16.1; Sennett, Matrix Analysis of Structures, Example 3.1.
 * Tolerance: each row's own, from 0.01 to 2 %, from its printed digits.
 */
class FrameExamplesCheck {
    private static final double RIGID_AREA = 1e6;

    @Test
    void kassimaliPlaneFrame() {
        FrameSolution solved = new PlaneFrame()
                .node("1", 0, 0)
                .node("2", 120, 240)
                .node("3", 360, 240)
                .beam("a", "1", "2", 29000, 11.8, 310)
                .beam("b", "2", "3", 29000, 11.8, 310)
                .fix("1")
                .fix("3")
                .load(new Load.AtPoint("a", Math.sqrt(120 * 120 + 240 * 240) / 2, new Vector(0, -90, 0)))
                .load("2", 0, 0, -125 * 12)
                .load(new Load.Uniform("b", new Vector(0, -1.5 / 12, 0)))
                .solved();
        Motion at2 = solved.motion(CASE, "2");
        WorkedExample.of("FR1")
                .meets("u2_in", at2.shiftIn().x())
                .meets("v2_in", at2.shiftIn().y())
                .meets("rot2_rad", at2.turnRad().z())
                .meets("R1x", solved.reaction(CASE, "1").forceLb().x())
                .meets("R1y", solved.reaction(CASE, "1").forceLb().y())
                .meets("M1_kipin", solved.reaction(CASE, "1").momentLbIn().z())
                .meets("R3x", solved.reaction(CASE, "3").forceLb().x())
                .meets("R3y", solved.reaction(CASE, "3").forceLb().y())
                .meets("M3_kipin", solved.reaction(CASE, "3").momentLbIn().z())
                .everyValueWasMet();
    }

    @Test
    void mcGuireBeamWithOverhang() {
        double push = 5000 * Math.sqrt(0.5);
        FrameSolution solved = new PlaneFrame()
                .node("a", 0, 0)
                .node("b", 8000, 0)
                .node("c", 13000, 0)
                .beam("ab", "a", "b", 200e3, 6000, 200e6)
                .beam("bc", "b", "c", 200e3, 4000, 50e6)
                .fix("a")
                .hold("b", Dof.UY)
                .load("c", push, -push, 0)
                .solved();
        WorkedExample.of("FR2")
                .meets("ub_mm", solved.motion(CASE, "b").shiftIn().x())
                .meets("uc_mm", solved.motion(CASE, "c").shiftIn().x())
                .meets("vc_mm", solved.motion(CASE, "c").shiftIn().y())
                .meets("rotb_rad", solved.motion(CASE, "b").turnRad().z())
                .meets("rotc_rad", solved.motion(CASE, "c").turnRad().z())
                .everyValueWasMet();
    }

    @Test
    void mcGuireBendingAndTorsion() {
        double e = 200e3;
        double g = e / 2.6;
        List<Node> nodes = List.of(new Node("a", 0, 0, 0), new Node("b", 8000, 0, 0), new Node("c", 13000, 0, 0));
        List<Member> members = List.of(
                Member.fixed("ab", "a", "b", new Stiffness(e, g, 6000, 200e6, 200e6, 300e3), Vector.Y),
                Member.fixed("bc", "b", "c", new Stiffness(e, g, 4000, 50e6, 50e6, 100e3), Vector.Y));
        FrameSolution solved = Frames.solve(
                FrameModel.of(nodes, members, List.of(Support.fixed("a"), Support.fixed("c"))),
                LoadCase.of(CASE, new Load.AtNode("b", new Vector(0, -1000, 0), new Vector(40_000, 0, 0))));
        WorkedExample.of("FR3")
                .meets("vb_mm", solved.motion(CASE, "b").shiftIn().y())
                .meets("rotb_rad", solved.motion(CASE, "b").turnRad().z())
                .meets("Ma_Nmm", solved.reaction(CASE, "a").momentLbIn().z())
                .meets("Mc_Nmm", solved.reaction(CASE, "c").momentLbIn().z())
                .meets("Ta_Nmm", solved.reaction(CASE, "a").momentLbIn().x())
                .meets("Tc_Nmm", solved.reaction(CASE, "c").momentLbIn().x())
                .everyValueWasMet();
    }

    @Test
    void mcGuireRightAngleFrame() {
        FrameSolution solved = new PlaneFrame()
                .node("a", 0, 5)
                .node("b", 8, 5)
                .node("c", 8, 0)
                .beam("ab", "a", "b", 200e9, 6000e-6, 200e-6)
                .beam("bc", "b", "c", 200e9, 4000e-6, 50e-6)
                .fix("a")
                .fix("c")
                .load("b", 70710.7, -70710.7, 50e3)
                .solved();
        Motion b = solved.motion(CASE, "b");
        Wrench a = solved.reaction(CASE, "a");
        Wrench c = solved.reaction(CASE, "c");
        WorkedExample.of("FR4")
                .meets("ub_m", b.shiftIn().x())
                .meets("vb_m", b.shiftIn().y())
                .meets("rotb_rad", b.turnRad().z())
                .meets("Rax_N", a.forceLb().x())
                .meets("Ray_N", a.forceLb().y())
                .meets("Ma_Nm", a.momentLbIn().z())
                .meets("Rcx_N", c.forceLb().x())
                .meets("Rcy_N", c.forceLb().y())
                .meets("Mc_Nm", c.momentLbIn().z())
                .everyValueWasMet();
    }

    @Test
    void loganFixedPortal() {
        FrameSolution solved = new PlaneFrame()
                .node("1", 0, 0)
                .node("2", 0, 120)
                .node("3", 120, 120)
                .node("4", 120, 0)
                .beam("12", "1", "2", 30e6, 10, 200)
                .beam("23", "2", "3", 30e6, 10, 100)
                .beam("34", "3", "4", 30e6, 10, 200)
                .fix("1")
                .fix("4")
                .load("2", 10000, 0, 0)
                .load("3", 0, 0, 5000)
                .solved();
        Wrench foot1 = solved.reaction(CASE, "1");
        Wrench foot4 = solved.reaction(CASE, "4");
        WorkedExample.of("FR5")
                .meets("V1_lb", Math.abs(foot1.forceLb().x()))
                .meets("N1_lb", Math.abs(foot1.forceLb().y()))
                .meets("M1_lbin", Math.abs(foot1.momentLbIn().z()))
                .meets(
                        "M12_lbin",
                        Math.abs(solved.endForces(CASE, "12").end().momentLbIn().z()))
                .meets("V4_lb", Math.abs(foot4.forceLb().x()))
                .meets("N4_lb", Math.abs(foot4.forceLb().y()))
                .meets(
                        "M34_lbin",
                        Math.abs(solved.endForces(CASE, "34")
                                .start()
                                .momentLbIn()
                                .z()))
                .meets("M4_lbin", Math.abs(foot4.momentLbIn().z()))
                .everyValueWasMet();
        WorkedExample.of("FR6")
                .meets("u2_in", solved.motion(CASE, "2").shiftIn().x())
                .meets("v2_in", solved.motion(CASE, "2").shiftIn().y())
                .meets("rot2_rad", solved.motion(CASE, "2").turnRad().z())
                .meets("u3_in", solved.motion(CASE, "3").shiftIn().x())
                .meets("v3_in", solved.motion(CASE, "3").shiftIn().y())
                .meets("rot3_rad", solved.motion(CASE, "3").turnRad().z())
                .everyValueWasMet();
    }

    @Test
    void loganGabledFrame() {
        PlaneFrame frame = new PlaneFrame()
                .node("1", 0, 0)
                .node("2", 0, 360)
                .node("3", 180, 480)
                .node("4", 420, 480)
                .node("5", 600, 360)
                .node("6", 600, 0)
                .fix("1")
                .fix("6")
                .load("3", 0, -30, 0)
                .load("4", 0, -30, 0);
        for (int i = 1; i < 6; i++) frame.beam("m" + i, "" + i, "" + (i + 1), 30000, 12, 200);
        FrameSolution solved = frame.solved();
        WorkedExample.of("FR7")
                .meets("R1x_kip", solved.reaction(CASE, "1").forceLb().x())
                .meets("R1y_kip", solved.reaction(CASE, "1").forceLb().y())
                .meets(
                        "M1_kipin",
                        Math.abs(solved.reaction(CASE, "1").momentLbIn().z()))
                .meets("v3_in", solved.motion(CASE, "3").shiftIn().y())
                .meets(
                        "rot3_abs_rad",
                        Math.abs(solved.motion(CASE, "3").turnRad().z()))
                .everyValueWasMet();
    }

    @Test
    void weaverSpaceFrame() {
        Stiffness tube = new Stiffness(30000, 12000, 11, 56, 56, 83);
        FrameModel model = FrameModel.of(
                List.of(
                        new Node("1", 0, 120, 0),
                        new Node("2", 240, 120, 0),
                        new Node("3", 0, 0, 0),
                        new Node("4", 360, 0, 120)),
                List.of(
                        Member.fixed("31", "3", "1", tube, Vector.X),
                        Member.fixed("12", "1", "2", tube, Vector.Y),
                        Member.fixed("24", "2", "4", tube, Vector.Y)),
                List.of(Support.fixed("3"), Support.fixed("4")));
        FrameSolution solved = Frames.solve(
                model,
                LoadCase.of(
                        CASE,
                        new Load.AtNode("1", new Vector(2, 0, 0)),
                        new Load.AtNode("2", new Vector(0, -1, 0), new Vector(0, 0, -120))));
        WorkedExample example = WorkedExample.of("FR8");
        for (String node : List.of("1", "2")) {
            Motion motion = solved.motion(CASE, node);
            example.meets("n" + node + "_ux", motion.shiftIn().x())
                    .meets("n" + node + "_uy", motion.shiftIn().y())
                    .meets("n" + node + "_uz", motion.shiftIn().z())
                    .meets("n" + node + "_rx", motion.turnRad().x())
                    .meets("n" + node + "_ry", motion.turnRad().y())
                    .meets("n" + node + "_rz", motion.turnRad().z());
        }
        Wrench foot = solved.reaction(CASE, "3");
        example.meets("R3_x", foot.forceLb().x())
                .meets("R3_y", foot.forceLb().y())
                .meets("R3_z", foot.forceLb().z())
                .meets("R3_mx", foot.momentLbIn().x())
                .meets("R3_my", foot.momentLbIn().y())
                .meets("R3_mz", foot.momentLbIn().z())
                .everyValueWasMet();
    }

    @Test
    void afnorTwoCantileversAndARigidLink() {
        double i = 1.3333e-8;
        FrameSolution solved = new PlaneFrame()
                .node("a", 0, 0)
                .node("b", 2, 0)
                .node("c", 0, 0.2)
                .node("d", 2, 0.2)
                .beam("ab", "a", "b", 200e9, 1, i)
                .beam("cd", "c", "d", 200e9, 1, i)
                .beam("link", "b", "d", 200e9, 1, 1e-3)
                .fix("a")
                .fix("c")
                .load("b", 0, -1000, 0)
                .solved();
        WorkedExample.of("FR9")
                .meets("v_tip_m", solved.motion(CASE, "d").shiftIn().y())
                .everyValueWasMet();
    }

    @Test
    void hibbelerPlaneFrame() {
        FrameSolution solved = new PlaneFrame()
                .node("1", 0, 240)
                .node("2", 240, 240)
                .node("3", 240, 0)
                .beam("12", "1", "2", 29000, 10, 500)
                .beam("23", "2", "3", 29000, 10, 500)
                .hold("1", Dof.UY)
                .fix("3")
                .load("2", 5, 0, 0)
                .solved();
        WorkedExample.of("FR10")
                .meets("u2_in", solved.motion(CASE, "2").shiftIn().x())
                .meets("v2_in", solved.motion(CASE, "2").shiftIn().y())
                .meets("rot2_rad", solved.motion(CASE, "2").turnRad().z())
                .meets("u1_in", solved.motion(CASE, "1").shiftIn().x())
                .meets("rot1_rad", solved.motion(CASE, "1").turnRad().z())
                .meets("R1y_kip", solved.reaction(CASE, "1").forceLb().y())
                .meets("R3x_kip", solved.reaction(CASE, "3").forceLb().x())
                .meets("R3y_kip", solved.reaction(CASE, "3").forceLb().y())
                .meets("M3_kipin", solved.reaction(CASE, "3").momentLbIn().z())
                .everyValueWasMet();
    }

    @Test
    void kassimaliThreeHingedGable() {
        Vector down = new Vector(0, -1.5, 0);
        FrameSolution solved = new PlaneFrame()
                .node("A", 0, 0)
                .node("left", 0, 12)
                .node("ridge", 12, 24)
                .node("right", 24, 12)
                .node("B", 24, 0)
                .beam("a", "A", "left", 1e6, 1, 1)
                .beam("b", "left", "ridge", 1e6, 1, 1, List.of(Dof.RZ))
                .beam("c", "right", "ridge", 1e6, 1, 1)
                .beam("d", "right", "B", 1e6, 1, 1)
                .pin("A")
                .pin("B")
                .load("left", 20, 0, 0)
                .load(new Load.Uniform("b", down))
                .load(new Load.Uniform("c", down))
                .solved();
        WorkedExample.of("FR11")
                .meets("A_x_kip", solved.reaction(CASE, "A").forceLb().x())
                .meets("A_y_kip", solved.reaction(CASE, "A").forceLb().y())
                .meets("B_x_kip", solved.reaction(CASE, "B").forceLb().x())
                .meets("B_y_kip", solved.reaction(CASE, "B").forceLb().y())
                .everyValueWasMet();
    }

    @Test
    void sennettFixedBeam() {
        FrameSolution solved = new PlaneFrame()
                .node("a", 0, 0)
                .node("m", 1, 0)
                .node("b", 2, 0)
                .beam("am", "a", "m", 1e7, RIGID_AREA, 1)
                .beam("mb", "m", "b", 1e7, RIGID_AREA, 1)
                .fix("a")
                .fix("b")
                .load("m", 0, 1, 0)
                .solved();
        WorkedExample.of("FR12")
                .meets("v_mid", solved.motion(CASE, "m").shiftIn().y())
                .meets("M_end", Math.abs(solved.reaction(CASE, "a").momentLbIn().z()))
                .everyValueWasMet();
    }
}
