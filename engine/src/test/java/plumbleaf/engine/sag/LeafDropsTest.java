package plumbleaf.engine.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.BaseSpring;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.RodRuns;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.PostStock;

/** The leaf solved once and put on any post drops as the whole frame does. */
class LeafDropsTest {
    private static final Force PERSON = Force.pounds(200);
    private static final List<PostStock> POSTS = List.of(
            HungGates.WOOD_POST,
            HungGates.ROUND_POST,
            HungGates.SQUARE_POST,
            HungGates.pipe(2.375, 0.154),
            HungGates.pipe(4.5, 0.237));

    @Test
    void agreesWithTheWholeFrameOnEveryPostAndFooting() {
        for (int hinges = 2; hinges <= 4; hinges++)
            for (int braces = 0; braces <= 2; braces++)
                agrees(HungGates.gate(
                        HungGates.clad(HungGates.leaf(46, 66, braces, 0, hinges, SwingWay.IN), 90, 0.9),
                        HungGates.ROUND_POST));
        agrees(HungGates.walkGate().shut(ShutAt.FOOT));
    }

    @Test
    void agreesWhereRodsPullAndWhereTheyGoSlack() {
        for (RodRuns runs : RodRuns.values())
            for (double pretension : new double[] {0, 40, 400})
                agrees(HungGates.braced(new Bracing.Rod(Length.inches(0.375), Force.pounds(pretension), runs)));
    }

    /** The trap a search falls into first: a wider or deeper hole that comes out weaker. In sand, whose turn does not know the width, and in clay. */
    @Test
    void aWiderOrADeeperHoleNeverDropsMore() {
        HungGate gate = HungGates.walkGate();
        LeafDrops drops = LeafDrops.of(gate, PERSON, LifeJudgement.USUAL);
        PostGive post = PostGive.of(gate);
        List<SoilStiffness> soils = List.of(
                new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(8.1)),
                new SoilStiffness.Constant(Stress.psi(233)));
        for (SoilStiffness soil : soils) {
            double[] narrower = new double[8];
            Arrays.fill(narrower, Double.POSITIVE_INFINITY);
            for (double wide = 8; wide <= 24; wide += 2) {
                double shallower = Double.POSITIVE_INFINITY;
                for (int step = 0; step < 8; step++) {
                    HoleSize hole = new HoleSize(Length.inches(wide), Length.inches(30 + 6 * step));
                    double now = drops.on(post, soil.spring(hole, Length.inches(6)))
                            .total()
                            .inches();
                    assertThat(now).isLessThan(shallower).isLessThanOrEqualTo(narrower[step] + 1e-12);
                    shallower = now;
                    narrower[step] = now;
                }
            }
        }
    }

    private static void agrees(HungGate gate) {
        Random random = new Random(20261128);
        LeafDrops drops = LeafDrops.of(gate, PERSON, LifeJudgement.USUAL);
        for (PostStock post : POSTS) {
            PostGive give = PostGive.of(gate.on(post));
            for (int i = 0; i < 3; i++) {
                BaseSpring foot = foot(random);
                AfterHanging whole =
                        Sags.afterHanging(gate.on(post), foot, HungLoads.person(PERSON), LifeJudgement.USUAL);
                AfterHanging quick = drops.on(give, foot);
                near(quick.creep().inches(), whole.creep().inches());
                near(quick.season().inches(), whole.season().inches());
                near(quick.wear().inches(), whole.wear().inches());
                near(quick.residual().inches(), whole.residual().inches());
            }
        }
    }

    /** A foot of any kind: a pier, or a plate that gives differently in each plane, sinks and twists. */
    private static BaseSpring foot(Random random) {
        PierSpring one = pier(random);
        if (random.nextBoolean()) return one;
        return new BaseSpring.Planes(one, pier(random), OptionalDouble.of(4e4), OptionalDouble.of(3e6));
    }

    private static PierSpring pier(Random random) {
        double k = 500 + 5000 * random.nextDouble();
        double armIn = 15 + 10 * random.nextDouble();
        return new PierSpring(k, -k * armIn, k * armIn * armIn * 1.4);
    }

    private static void near(double quick, double whole) {
        assertThat(quick).isCloseTo(whole, within(1e-9 * Math.max(1, Math.abs(whole))));
    }
}
