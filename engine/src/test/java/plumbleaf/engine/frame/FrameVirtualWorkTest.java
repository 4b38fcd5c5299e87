package plumbleaf.engine.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A displacement by stiffness against the same by virtual work: the parts add up to it. */
class FrameVirtualWorkTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16})
    void thePartsAddUpToTheDisplacement(long seed) {
        FrameModel model = RandomFrames.model(seed);
        RandomFrames from = RandomFrames.from(seed + 31);
        FrameSolution solved = Frames.solve(model, RandomFrames.loads("all", model, seed, true));
        List<Probe> probes = List.of(
                Probe.shift("far", Vector.Z.negated()),
                Probe.shiftAt("far", from.vector(5), from.vector(1)),
                Probe.turn(from.anyNode(model), from.vector(1)));
        for (Probe probe : probes) {
            VirtualWork split = solved.virtualWork("all", probe);
            assertThat(split.sum())
                    .isCloseTo(split.displacement(), within(1e-9 * Math.max(1, Math.abs(split.displacement()))));
        }
    }

    @Test
    void rigidLinksKeepNineDigits() {
        FrameModel model = FrameModel.of(
                        List.of(
                                new Node("foot", 0, 0, 0),
                                new Node("top", 0, 0, 40),
                                new Node("arm", 0, 0, 40),
                                new Node("tip", 50, 0, 40)),
                        List.of(
                                Member.fixed(
                                        "post", "foot", "top", Stiffness.alike(29e6, 11.2e6, 1, 0.6, 1.2), Vector.X),
                                Member.fixed(
                                        "leaf", "arm", "tip", Stiffness.alike(29e6, 11.2e6, 1, 0.3, 0.6), Vector.Z)),
                        List.of())
                .with(new Link(
                        "hinge",
                        "top",
                        "arm",
                        new Vector(0, 0, 40),
                        Vector.X,
                        Vector.Y,
                        1e8,
                        1e8,
                        1e8,
                        1e10,
                        1e10,
                        1e10))
                .with(new GroundSpring("footing", "foot", SpringMatrix.diagonal(5e3, 5e3, 1e6, 1e6, 1e6, 1e6)));
        FrameSolution solved = Frames.solve(model, LoadCase.of("D", new Load.AtNode("tip", new Vector(0, 0, -100))));
        VirtualWork split = solved.virtualWork("D", Probe.shift("tip", Vector.Z.negated()));
        double leaf = 100 * 50 * 50 * 50 / (3 * 29e6 * 0.3);
        double post = 100 * 50.0 * 50 * 40 / (29e6 * 0.6) + 100 * 40 / 29e6;
        double footing = 100 / 1e6 + 100 * 50 * 50 / 1e6;
        assertThat(split.sumOf("leaf"::equals)).isCloseTo(leaf, within(1e-9));
        assertThat(split.sumOf("post"::equals)).isCloseTo(post, within(1e-9));
        assertThat(split.sumOf("footing"::equals)).isCloseTo(footing, within(1e-9));
        assertThat(split.sum()).isCloseTo(split.displacement(), within(1e-9 * split.displacement()));
    }
}
