package plumbleaf.reference.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static plumbleaf.reference.frame.PlaneFrame.CASE;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
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
 * Displacements, reactions and bar forces of plane and space trusses.
 *
 * Source: rows T1 to T5 and T7 of frame-examples.csv: Kassimali, Matrix Analysis of Structures 2e, Examples 3.8, 3.9 and 8.1; Levy and
 * Spillers, three-bar example; Timoshenko, Strength of Materials Part I, page 10 problem 2; a closed form for the tension-only pair.
 * Tolerance: each row's own, from 0.001 to 0.5 %, from its printed digits.
 */
class TrussExamplesCheck {
    @Test
    void kassimaliThreeBars() {
        FrameSolution solved = new PlaneFrame()
                .node("1", 0, 0)
                .node("2", 144, 0)
                .node("3", 288, 0)
                .node("4", 144, 192)
                .bar("1-4", "1", "4", 29000, 8)
                .bar("2-4", "2", "4", 29000, 6)
                .bar("3-4", "3", "4", 29000, 8)
                .pin("1")
                .pin("2")
                .pin("3")
                .load("4", 150, -300, 0)
                .solved();
        Vector moved = solved.motion(CASE, "4").shiftIn();
        WorkedExample.of("T1")
                .meets("u4_in", moved.x())
                .meets("v4_in", moved.y())
                .everyValueWasMet();
    }

    @Test
    void kassimaliFiveBars() {
        double e = 70e6;
        double a = 0.004;
        FrameSolution solved = new PlaneFrame()
                .node("1", 0, 0)
                .node("2", 10, 0)
                .node("3", 0, 8)
                .node("4", 6, 8)
                .bar("1-3", "1", "3", e, a)
                .bar("3-4", "3", "4", e, a)
                .bar("1-4", "1", "4", e, a)
                .bar("2-3", "2", "3", e, a)
                .bar("2-4", "2", "4", e, a)
                .pin("1")
                .pin("2")
                .hold("3", Dof.UX)
                .load("3", 0, -400, 0)
                .load("4", 800, -400, 0)
                .solved();
        WorkedExample.of("T2")
                .meets("R1x_kN", solved.reaction(CASE, "1").forceLb().x())
                .meets("R1y_kN", solved.reaction(CASE, "1").forceLb().y())
                .meets("R2x_kN", solved.reaction(CASE, "2").forceLb().x())
                .meets("R2y_kN", solved.reaction(CASE, "2").forceLb().y())
                .meets("R3x_kN", solved.reaction(CASE, "3").forceLb().x())
                .everyValueWasMet();
    }

    @Test
    void kassimaliSpaceTruss() {
        List<Node> nodes = List.of(
                new Node("1", -72, 0, 96),
                new Node("2", 144, 0, 96),
                new Node("3", 72, 0, -96),
                new Node("4", -144, 0, -96),
                new Node("5", 0, 288, 0));
        Stiffness bar = Stiffness.alike(10000, 10000, 8.4, 1, 1);
        List<Member> members = new ArrayList<>();
        List<Support> supports = new ArrayList<>();
        for (String foot : List.of("1", "2", "3", "4")) {
            members.add(Member.bar(foot + "-5", foot, "5", bar, Vector.X));
            supports.add(Support.fixed(foot));
        }
        supports.add(new Support("5", List.of(Dof.RX, Dof.RY, Dof.RZ)));
        FrameSolution solved = Frames.solve(
                FrameModel.of(nodes, members, supports),
                LoadCase.of(CASE, new Load.AtNode("5", new Vector(0, -100, -50))));
        Vector moved = solved.motion(CASE, "5").shiftIn();
        WorkedExample example = WorkedExample.of("T3")
                .meets("u5_in", moved.x())
                .meets("v5_in", moved.y())
                .meets("w5_in", moved.z());
        for (String foot : List.of("1", "2", "3", "4")) {
            Vector reaction = solved.reaction(CASE, foot).forceLb();
            example.meets("R" + foot + "_x", reaction.x())
                    .meets("R" + foot + "_y", reaction.y())
                    .meets("R" + foot + "_z", reaction.z());
        }
        example.everyValueWasMet();
    }

    @Test
    void levyAndSpillersThreeBars() {
        FrameSolution solved = new PlaneFrame()
                .node("1", 10, 20)
                .node("2", 0, 20)
                .node("3", 0, 10)
                .node("4", 10, 0)
                .bar("1-2", "1", "2", 3e7, 0.657)
                .bar("1-3", "1", "3", 3e7, 0.657)
                .bar("1-4", "1", "4", 3e7, 0.657)
                .pin("2")
                .pin("3")
                .pin("4")
                .load("1", -10000, -5000, 0)
                .solved();
        Vector moved = solved.motion(CASE, "1").shiftIn();
        WorkedExample.of("T4")
                .meets("u1_in", moved.x())
                .meets("v1_in", moved.y())
                .meets("N12_lb", solved.internalAt(CASE, "1-2", 5).nLb())
                .meets("N13_lb", solved.internalAt(CASE, "1-3", 5).nLb())
                .meets("N14_lb", solved.internalAt(CASE, "1-4", 5).nLb())
                .everyValueWasMet();
    }

    @Test
    void timoshenkoTwoBarsInAVee() {
        double half = 180 * Math.sqrt(3) / 2;
        FrameSolution solved = new PlaneFrame()
                .node("left", -half, 90)
                .node("right", half, 90)
                .node("low", 0, 0)
                .bar("l", "left", "low", 30e6, 0.5)
                .bar("r", "right", "low", 30e6, 0.5)
                .pin("left")
                .pin("right")
                .load("low", 0, -5000, 0)
                .solved();
        WorkedExample.of("T5")
                .meets("delta_in", -solved.motion(CASE, "low").shiftIn().y())
                .meets("sigma_psi", solved.internalAt(CASE, "l", 90).nLb() / 0.5)
                .everyValueWasMet();
    }

    @Test
    void theSlackBraceOfAPairDropsOut() {
        FrameSolution both = bracedStrut(true);
        double lower = both.internalAt(CASE, "lower brace", 50).nLb();
        assertThat(lower).isNegative();
        FrameSolution one = bracedStrut(false);
        WorkedExample.of("T7")
                .meets(
                        "brace_tension_kip",
                        one.internalAt(CASE, "upper brace", 50).nLb())
                .meets(
                        "strut_compression_kip",
                        -one.internalAt(CASE, "strut", 50).nLb())
                .meets("other_brace_kip", 0)
                .everyValueWasMet();
    }

    private static FrameSolution bracedStrut(boolean withLower) {
        PlaneFrame frame = new PlaneFrame()
                .node("wall", 0, 0)
                .node("above", 0, 10)
                .node("below", 0, -10)
                .node("tip", 100, 0)
                .bar("strut", "wall", "tip", 29000, 1)
                .bar("upper brace", "above", "tip", 29000, 0.1)
                .pin("wall")
                .pin("above")
                .fix("below")
                .load("tip", 0, -10, 0);
        if (withLower) frame.bar("lower brace", "below", "tip", 29000, 0.1);
        return frame.solved();
    }
}
