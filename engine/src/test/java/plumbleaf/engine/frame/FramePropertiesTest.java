package plumbleaf.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What every linear frame must do, whatever it looks like. */
class FramePropertiesTest {
    private static final double TINY = 1e-9;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void loadsAndReactionsBalance(long seed) {
        FrameModel model = RandomFrames.model(seed);
        FrameSolution solved = Frames.solve(model, RandomFrames.loads("all", model, seed, true));
        assertThat(solved.balance("all").relative()).isLessThan(TINY);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void everyFreeNodeBalances(long seed) {
        FrameModel model = RandomFrames.model(seed);
        LoadCase loads = RandomFrames.loads("all", model, seed, true);
        FrameSolution solved = Frames.solve(model, loads);
        for (Node node : model.nodes()) {
            Vector sum = solved.reaction("all", node.id()).forceLb();
            for (Load load : loads.loads())
                if (load instanceof Load.AtNode at && at.node().equals(node.id())) sum = sum.plus(at.forceLb());
            for (Member member : model.members()) {
                List<Vector> axes = solved.memberAxes(member.id());
                if (member.start().equals(node.id()))
                    sum = sum.minus(global(
                            axes, solved.endForces("all", member.id()).start().forceLb()));
                if (member.end().equals(node.id()))
                    sum = sum.minus(global(
                            axes, solved.endForces("all", member.id()).end().forceLb()));
            }
            for (GroundSpring spring : model.groundSprings())
                if (spring.node().equals(node.id()))
                    sum = sum.plus(solved.groundForce("all", spring.id()).forceLb());
            for (Link link : model.links()) {
                Vector ex = link.xAxis().unit();
                Vector ey = link.yAxis().minus(ex.times(ex.dot(link.yAxis()))).unit();
                Vector pull = global(
                        List.of(ex, ey, ex.cross(ey)),
                        solved.linkForce("all", link.id()).forceLb());
                if (link.from().equals(node.id())) sum = sum.plus(pull);
                if (link.to().equals(node.id())) sum = sum.minus(pull);
            }
            assertThat(sum.length()).as(node.id()).isLessThan(1e-5);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void whatOneLoadDoesThereTheOtherDoesHere(long seed) {
        FrameModel model = RandomFrames.model(seed);
        RandomFrames from = RandomFrames.from(seed + 77);
        Probe here = Probe.shiftAt(from.anyNode(model), from.vector(9), from.vector(1));
        Probe there = Probe.turn(from.anyNode(model), from.vector(1));
        FrameSolution solved = Frames.solve(
                model, List.of(LoadCase.of("here", here.unitLoad()), LoadCase.of("there", there.unitLoad())));
        double a = solved.displacement("here", there);
        double b = solved.displacement("there", here);
        assertThat(a).isCloseTo(b, within(TINY * Math.max(Math.abs(a), 1e-8)));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void turningTheWholeFrameTurnsTheAnswer(long seed) {
        FrameModel model = RandomFrames.model(seed);
        FrameModel plain =
                new FrameModel(model.nodes(), model.members(), List.of(), model.links(), List.of(Support.fixed("n0")));
        LoadCase loads = RandomFrames.loads("all", plain, seed, false);
        FrameSolution before = Frames.solve(plain, loads);
        FrameSolution after = Frames.solve(turned(plain), turned(loads));
        for (Node node : plain.nodes()) {
            Vector expected = turned(before.motion("all", node.id()).shiftIn());
            Vector found = after.motion("all", node.id()).shiftIn();
            assertThat(found.minus(expected).length()).isLessThan(1e-8 * Math.max(1, expected.length()));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void aStifferFrameNeverMovesMoreUnderItsOwnLoad(long seed) {
        FrameModel model = RandomFrames.model(seed);
        RandomFrames from = RandomFrames.from(seed + 5);
        Probe loaded = Probe.shift(from.anyNode(model), from.vector(1));
        LoadCase load = LoadCase.of("one", loaded.unitLoad());
        double before = Frames.solve(model, load).displacement("one", loaded);
        for (int i = 0; i < model.members().size(); i++) {
            List<Member> members = new ArrayList<>(model.members());
            members.set(i, members.get(i).with(members.get(i).stiffness().times(1.5)));
            FrameModel stiffer =
                    new FrameModel(model.nodes(), members, model.groundSprings(), model.links(), model.supports());
            assertThat(Frames.solve(stiffer, load).displacement("one", loaded))
                    .isLessThanOrEqualTo(before * (1 + TINY));
        }
        List<GroundSpring> springs = List.of(new GroundSpring(
                "footing",
                model.groundSprings().get(0).node(),
                model.groundSprings().get(0).stiffness().times(2)));
        FrameModel deeper = new FrameModel(model.nodes(), model.members(), springs, model.links(), model.supports());
        assertThat(Frames.solve(deeper, load).displacement("one", loaded)).isLessThanOrEqualTo(before * (1 + TINY));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void casesAddUp(long seed) {
        FrameModel model = RandomFrames.model(seed);
        LoadCase a = RandomFrames.loads("a", model, seed, true);
        LoadCase b = RandomFrames.loads("b", model, seed + 100, false);
        LoadCase both = a.plus(b.times(0.6)).named("both");
        FrameSolution solved = Frames.solve(model, List.of(a, b, both));
        for (Node node : model.nodes()) {
            Vector sum = solved.motion("a", node.id())
                    .shiftIn()
                    .plus(solved.motion("b", node.id()).shiftIn().times(0.6));
            assertThat(solved.motion("both", node.id()).shiftIn().minus(sum).length())
                    .isLessThan(TINY * Math.max(1, sum.length()));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theSameFrameGivesTheSameDigits(long seed) {
        FrameModel model = RandomFrames.model(seed);
        LoadCase loads = RandomFrames.loads("all", model, seed, true);
        for (Node node : model.nodes())
            assertThat(Frames.solve(model, loads).motion("all", node.id()))
                    .isEqualTo(Frames.solve(model, loads).motion("all", node.id()));
    }

    private static Vector global(List<Vector> axes, Vector local) {
        return axes.get(0)
                .times(local.x())
                .plus(axes.get(1).times(local.y()))
                .plus(axes.get(2).times(local.z()));
    }

    /** A turn by 0.7 rad about the axis (1, 2, 2)/3, by Rodrigues. */
    private static Vector turned(Vector v) {
        Vector axis = new Vector(1 / 3.0, 2 / 3.0, 2 / 3.0);
        double cos = StrictMath.cos(0.7);
        double sin = StrictMath.sin(0.7);
        return v.times(cos).plus(axis.cross(v).times(sin)).plus(axis.times(axis.dot(v) * (1 - cos)));
    }

    private static FrameModel turned(FrameModel model) {
        return new FrameModel(
                model.nodes().stream()
                        .map(node -> Node.at(node.id(), turned(node.place())))
                        .toList(),
                model.members().stream()
                        .map(member -> new Member(
                                member.id(),
                                member.start(),
                                member.end(),
                                member.stiffness(),
                                turned(member.orientation()),
                                turned(member.startOffsetIn()),
                                turned(member.endOffsetIn()),
                                member.startReleases(),
                                member.endReleases()))
                        .toList(),
                model.groundSprings(),
                model.links().stream().map(FramePropertiesTest::turned).toList(),
                model.supports());
    }

    private static Link turned(Link link) {
        return new Link(
                link.id(),
                link.from(),
                link.to(),
                turned(link.atIn()),
                turned(link.xAxis()),
                turned(link.yAxis()),
                link.uxLbPerIn(),
                link.uyLbPerIn(),
                link.uzLbPerIn(),
                link.rxLbInPerRad(),
                link.ryLbInPerRad(),
                link.rzLbInPerRad());
    }

    private static LoadCase turned(LoadCase loads) {
        return new LoadCase(
                loads.name(),
                loads.loads().stream()
                        .map(load -> load.match(
                                (Load.AtNode at) -> (Load)
                                        new Load.AtNode(at.node(), turned(at.forceLb()), turned(at.momentLbIn())),
                                uniform -> new Load.Uniform(
                                        uniform.member(),
                                        turned(uniform.perInchLb()),
                                        turned(uniform.couplePerInchLb()),
                                        uniform.fromIn(),
                                        uniform.toIn()),
                                point -> new Load.AtPoint(
                                        point.member(),
                                        point.atIn(),
                                        turned(point.forceLb()),
                                        turned(point.momentLbIn())),
                                settlement -> settlement))
                        .toList());
    }
}
