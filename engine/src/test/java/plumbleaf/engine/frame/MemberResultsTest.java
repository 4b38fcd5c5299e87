package plumbleaf.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Forces and movement between the ends of a member. */
class MemberResultsTest {
    private static final Stiffness TUBE = new Stiffness(29e6, 11.2e6, 0.9, 0.4, 0.5, 0.8);

    @Test
    void simpleBeamUnderItsOwnWeight() {
        FrameModel beam = FrameModel.of(
                List.of(new Node("a", 0, 0, 0), new Node("b", 100, 0, 0)),
                List.of(Member.fixed("beam", "a", "b", TUBE, Vector.Y)),
                List.of(
                        Support.pinned("a"),
                        new Support("a", List.of(Dof.RX)),
                        new Support("b", List.of(Dof.UY, Dof.UZ))));
        FrameSolution solved = Frames.solve(beam, LoadCase.of("w", new Load.Uniform("beam", new Vector(0, -2, 0))));
        Extremes extremes = solved.extremes("w", "beam");
        assertThat(extremes.mzMost().atIn()).isCloseTo(50, within(1e-9));
        assertThat(extremes.mzMost().forces().mzLbIn()).isCloseTo(2 * 100 * 100 / 8.0, within(1e-9));
        assertThat(solved.internalAt("w", "beam", 0).vyLb()).isCloseTo(-100, within(1e-9));
        assertThat(solved.motionAlong("w", "beam", 50).shiftIn().y())
                .isCloseTo(-5 * 2 * 1e8 / (384 * 29e6 * 0.5), within(1e-12));
    }

    @Test
    void theTwoMomentsTogetherPeakBetweenTheirOwnPeaks() {
        FrameModel beam = FrameModel.of(
                List.of(new Node("a", 0, 0, 0), new Node("b", 100, 0, 0)),
                List.of(Member.fixed("beam", "a", "b", TUBE, Vector.Y)
                        .released(List.of(Dof.RY, Dof.RZ), List.of(Dof.RY, Dof.RZ))),
                List.of(Support.fixed("a"), Support.fixed("b")));
        FrameSolution solved = Frames.solve(
                beam,
                LoadCase.of(
                        "w",
                        new Load.Uniform("beam", new Vector(0, -2, 0)),
                        new Load.Uniform("beam", new Vector(0, 0, -3), 0, 60)));
        double most = 0;
        for (int i = 0; i <= 100_000; i++)
            most = Math.max(most, solved.internalAt("w", "beam", i / 1000.0).bendingLbIn());
        Extreme found = solved.extremes("w", "beam").bendingMost();
        assertThat(found.forces().bendingLbIn()).isCloseTo(most, within(1e-4)).isGreaterThanOrEqualTo(most);
        assertThat(found.atIn()).isBetween(42.0, 50.0);
    }

    /** A node put into a member changes nothing: what was inside is now at the node. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void cuttingAMemberInTwoChangesNothing(long seed) {
        FrameModel model = RandomFrames.model(seed);
        Member cut = null;
        for (Member member : model.members())
            if (member.id().startsWith("m") && !member.endReleases().isEmpty()) cut = member;
        Member whole = Objects.requireNonNull(cut);
        LoadCase loads = LoadCase.of(
                "all",
                new Load.Uniform(whole.id(), new Vector(1, 2, -3), new Vector(4, -9, 5), 3, 9),
                new Load.AtPoint(whole.id(), 4, new Vector(20, 5, -9), new Vector(30, 10, 70)),
                new Load.AtNode("far", new Vector(0, 40, -100)));
        FrameSolution before = Frames.solve(model, loads);
        double at = 7.25;
        Vector axis = before.memberAxes(whole.id()).get(0);
        Vector begin = place(model, whole.start()).plus(whole.startOffsetIn());
        List<Node> nodes = new ArrayList<>(model.nodes());
        nodes.add(Node.at("cut", begin.plus(axis.times(at))));
        List<Member> members = new ArrayList<>(model.members());
        Vector across = before.memberAxes(whole.id()).get(1);
        members.set(
                members.indexOf(whole),
                new Member(
                        whole.id(),
                        whole.start(),
                        "cut",
                        whole.stiffness(),
                        across,
                        whole.startOffsetIn(),
                        Vector.ZERO,
                        whole.startReleases(),
                        List.of()));
        members.add(new Member(
                "rest",
                "cut",
                whole.end(),
                whole.stiffness(),
                across,
                Vector.ZERO,
                whole.endOffsetIn(),
                List.of(),
                whole.endReleases()));
        FrameSolution after = Frames.solve(
                new FrameModel(nodes, members, model.groundSprings(), model.links(), model.supports()),
                loads.plus(LoadCase.of(
                        "", new Load.Uniform("rest", new Vector(1, 2, -3), new Vector(4, -9, 5), 0, 9 - at))));
        Motion inside = before.motionAlong("all", whole.id(), at);
        Motion node = after.motion("all", "cut");
        assertThat(inside.shiftIn().minus(node.shiftIn()).length()).isLessThan(1e-9);
        assertThat(inside.turnRad().minus(node.turnRad()).length()).isLessThan(1e-9);
        Internal forces = before.internalAt("all", whole.id(), at);
        Wrench end = after.endForces("all", whole.id()).end();
        assertThat(forces.mzLbIn()).isCloseTo(end.momentLbIn().z(), within(1e-5));
        assertThat(forces.myLbIn()).isCloseTo(end.momentLbIn().y(), within(1e-5));
        assertThat(forces.tLbIn()).isCloseTo(end.momentLbIn().x(), within(1e-5));
        assertThat(forces.nLb()).isCloseTo(end.forceLb().x(), within(1e-6));
    }

    @Test
    void theEndOfAMemberMovesWithItsNodeUnlessReleased() {
        FrameModel model = RandomFrames.model(4);
        FrameSolution solved = Frames.solve(model, RandomFrames.loads("all", model, 4, false));
        for (Member member : model.members()) {
            if (!member.endReleases().isEmpty()) continue;
            Vector node = solved.motion("all", member.end()).shiftAt(member.endOffsetIn());
            Vector end = solved.motionAlong("all", member.id(), solved.memberLengthIn(member.id()))
                    .shiftIn();
            assertThat(end.minus(node).length()).isLessThan(1e-8);
        }
    }

    private static Vector place(FrameModel model, String id) {
        for (Node node : model.nodes()) if (node.id().equals(id)) return node.place();
        throw new IllegalArgumentException(id);
    }
}
