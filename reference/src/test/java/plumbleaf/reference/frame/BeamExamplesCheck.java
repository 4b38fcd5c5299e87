package plumbleaf.reference.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumbleaf.reference.frame.PlaneFrame.CASE;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.frame.Dof;
import plumbleaf.engine.frame.FrameModel;
import plumbleaf.engine.frame.FrameSolution;
import plumbleaf.engine.frame.Frames;
import plumbleaf.engine.frame.Load;
import plumbleaf.engine.frame.LoadCase;
import plumbleaf.engine.frame.Member;
import plumbleaf.engine.frame.Node;
import plumbleaf.engine.frame.Stiffness;
import plumbleaf.engine.frame.Support;
import plumbleaf.engine.frame.Vector;

/**
 * Single members and portals against closed forms: overhanging beam, cantilever, simple span, a door on two hinges, torsion of a held tube, sway of a portal.
 *
 * Source: rows B1, B2, S14, S15, H1, C1 and C2 of frame-examples.csv: Timoshenko, Strength of Materials Part I, page 98 problem 4; cantilever and
 * portal closed forms (from memory, form as in Kleinlogel); AISC Design Guide 9, Example 5.2 data; AISC Design Examples, Example F.9A; Halliday, Resnick, Walker,
 * Fundamentals of Physics, chapter 12 problem 31.
 * Tolerance: each row's own, from 0.01 to 0.3 %; the door 2 %, its two printed digits.
 */
class BeamExamplesCheck {
    private static final double RIGID_AREA = 1e7;

    @Test
    void timoshenkoOverhangs() {
        double w = 833.333;
        FrameSolution solved = new PlaneFrame()
                .node("l", -240, 0)
                .node("a", -120, 0)
                .node("m", 0, 0)
                .node("b", 120, 0)
                .node("r", 240, 0)
                .beam("la", "l", "a", 30e6, 100, 7892)
                .beam("am", "a", "m", 30e6, 100, 7892)
                .beam("mb", "m", "b", 30e6, 100, 7892)
                .beam("br", "b", "r", 30e6, 100, 7892)
                .pin("a")
                .hold("b", Dof.UY)
                .load(new Load.Uniform("la", new Vector(0, -w, 0)))
                .load(new Load.Uniform("br", new Vector(0, -w, 0)))
                .solved();
        WorkedExample.of("B1")
                .meets("sigma_psi", Math.abs(solved.internalAt(CASE, "am", 60).mzLbIn()) * 15 / 7892)
                .meets("delta_mid_in", solved.motion(CASE, "m").shiftIn().y())
                .everyValueWasMet();
    }

    @Test
    void cantileverUnderForceAndMoment() {
        double i = 2 * 27 / 12.0;
        WorkedExample.of("B2")
                .meets("delta_P_in", tip(15, 1e7, i, 1000, 0))
                .meets("delta_M_in", tip(15, 1e7, i, 0, 2500))
                .leavesOut("delta_shear_in")
                .everyValueWasMet();
    }

    private static double tip(double length, double e, double i, double force, double moment) {
        return new PlaneFrame()
                .node("wall", 0, 0)
                .node("tip", length, 0)
                .beam("b", "wall", "tip", e, 6, i)
                .fix("wall")
                .load("tip", 0, force, moment)
                .solved()
                .motion(CASE, "tip")
                .shiftIn()
                .y();
    }

    /** Dead and live in kip per foot; strength design takes 1.2 and 1.6 of them, which this program never does. */
    @Test
    void simpleSpan() {
        WorkedExample.of("S14")
                .meets("Mu_kipft", middle(1.2 * 0.32 + 1.6 * 0.96, 16))
                .meets("Ma_kipft", middle(Combination.D_L.of(0.32, 0.96, 0), 16))
                .everyValueWasMet();
    }

    private static double middle(double perFoot, double span) {
        FrameSolution solved = new PlaneFrame()
                .node("l", 0, 0)
                .node("r", span, 0)
                .beam("b", "l", "r", 1e6, 100, 100)
                .pin("l")
                .hold("r", Dof.UY)
                .load(new Load.Uniform("b", new Vector(0, -perFoot, 0)))
                .solved();
        return Math.abs(solved.internalAt(CASE, "b", span / 2).mzLbIn());
    }

    /** A stiff frame on two hinges a metre and a half apart that carry its weight alike; a hinge pulls, the other pushes. Metres and newtons. */
    @Test
    void doorOnTwoHinges() {
        double weight = 27 * 9.8;
        FrameSolution solved = new PlaneFrame()
                .node("low post", 0, 0.3)
                .node("high post", 0, 1.8)
                .fix("low post")
                .fix("high post")
                .node("low", 1e-6, 0.3)
                .node("high", 1e-6, 1.8)
                .node("middle", 0.455, 1.05)
                .beam("stile", "low", "high", 1e12, 1, 1)
                .beam("a", "low", "middle", 1e12, 1, 1)
                .beam("b", "high", "middle", 1e12, 1, 1)
                .hinge("low hinge", "low post", "low", 1e5)
                .hinge("high hinge", "high post", "high", 1e5)
                .load("middle", 0, -weight, 0)
                .solved();
        Vector high = solved.reaction(CASE, "high post").forceLb();
        Vector low = solved.reaction(CASE, "low post").forceLb();
        WorkedExample.of("H1")
                .meets("Fy_each_N", high.y())
                .meets("Fh_each_N", Math.abs(high.x()))
                .everyValueWasMet();
        assertThat(low.y()).isCloseTo(high.y(), within(0.1));
        assertThat(low.x()).isCloseTo(-high.x(), within(0.1));
    }

    @Test
    void torsionOfATubeHeldAtBothEnds() {
        FrameModel model = FrameModel.of(
                List.of(new Node("a", 0, 0, 0), new Node("b", 180, 0, 0)),
                List.of(Member.fixed("t", "a", "b", Stiffness.alike(29000, 11200, 17, 200, 176), Vector.Y)),
                List.of(Support.fixed("a"), Support.fixed("b")));
        FrameSolution solved =
                Frames.solve(model, LoadCase.of(CASE, new Load.AtPoint("t", 90, Vector.ZERO, new Vector(60, 0, 0))));
        WorkedExample.of("S15")
                .meets(
                        "theta_mid_rad",
                        solved.motionAlong(CASE, "t", 90).turnRad().x())
                .everyValueWasMet();
    }

    @Test
    void portalOnFixedFeet() {
        FrameSolution solved = portal().fix("1").fix("4").solved();
        WorkedExample.of("C1")
                .meets("sway_in", sway(solved))
                .meets(
                        "M_foot_kipin",
                        Math.abs(solved.reaction(CASE, "1").momentLbIn().z()))
                .meets("M_top_kipin", topMoment(solved))
                .everyValueWasMet();
    }

    @Test
    void portalOnPinnedFeet() {
        FrameSolution solved = portal().pin("1").pin("4").solved();
        WorkedExample.of("C2")
                .meets("sway_in", sway(solved))
                .meets("M_top_kipin", topMoment(solved))
                .everyValueWasMet();
    }

    private static PlaneFrame portal() {
        return new PlaneFrame()
                .node("1", 0, 0)
                .node("2", 0, 120)
                .node("3", 120, 120)
                .node("4", 120, 0)
                .beam("12", "1", "2", 30000, RIGID_AREA, 200)
                .beam("23", "2", "3", 30000, RIGID_AREA, 100)
                .beam("34", "3", "4", 30000, RIGID_AREA, 200)
                .load("2", 0.5, 0, 0)
                .load("3", 0.5, 0, 0);
    }

    private static double sway(FrameSolution solved) {
        return solved.motion(CASE, "2").shiftIn().x();
    }

    private static double topMoment(FrameSolution solved) {
        return Math.abs(solved.endForces(CASE, "12").end().momentLbIn().z());
    }
}
