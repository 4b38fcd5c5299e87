package plumbleaf.engine.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.RodRuns;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

/** A rod carries tension alone. */
class TautGateTest {
    private static LeafSway sway(RodRuns runs, double pretensionLb) {
        return sag(runs, pretensionLb).sway();
    }

    private static GateSag sag(RodRuns runs, double pretensionLb) {
        return Sags.of(
                HungGates.braced(new Bracing.Rod(Length.inches(0.375), Force.pounds(pretensionLb), runs)),
                HungLoads.person(Force.pounds(200)),
                LifeJudgement.USUAL);
    }

    @Test
    void theLeafsWeightPullsTheRodFromTheTopHingeCorner() {
        LeafSway sway = sway(RodRuns.FROM_TOP_HINGE, 0);
        assertThat(sway.rods()).hasSize(1);
        assertThat(sway.rods().get(0).slack()).isFalse();
        assertThat(sway.rods().get(0).pull().pounds()).isPositive();
        assertThat(sag(RodRuns.FROM_TOP_HINGE, 0).total()).isLessThan(sway.withoutRods());
    }

    @Test
    void aRodTheOtherWayGoesSlackAndChangesNothing() {
        GateSag sag = sag(RodRuns.FROM_LOW_HINGE, 0);
        assertThat(sag.sway().rods().get(0).slack()).isTrue();
        assertThat(sag.total().inches()).isCloseTo(sag.sway().withoutRods().inches(), within(1e-12));
    }

    @Test
    void whatItsPretensionHeldUpIsLostWhenItGoesSlack() {
        GateSag loose = sag(RodRuns.FROM_LOW_HINGE, 0);
        GateSag drawn = sag(RodRuns.FROM_LOW_HINGE, 5);
        assertThat(drawn.sway().rods().get(0).slack()).isTrue();
        assertThat(drawn.total()).isLessThan(loose.total());
    }

    @Test
    void drawnUpHardARodTheOtherWayHoldsToo() {
        GateSag drawn = sag(RodRuns.FROM_LOW_HINGE, 2000);
        assertThat(drawn.sway().rods().get(0).slack()).isFalse();
        assertThat(drawn.total()).isLessThan(drawn.sway().withoutRods());
    }

    @Test
    void ofTwoRodsDrawnUpBothPullAndTheirPullsDifferByTheLoad() {
        LeafSway sway = sway(RodRuns.BOTH, 1000);
        double first = sway.rods().get(0).pull().pounds();
        double second = sway.rods().get(1).pull().pounds();
        assertThat(first).isGreaterThan(1000);
        assertThat(second).isBetween(0.0, 1000.0);
    }

    /** While it pulls, pretension moves nothing: the leaf was trued with it on. */
    @ParameterizedTest
    @ValueSource(doubles = {10, 100, 800})
    void pretensionChangesTheDropOfAPullingRodNotAtAll(double pounds) {
        assertThat(sag(RodRuns.FROM_TOP_HINGE, pounds).total().inches())
                .isCloseTo(sag(RodRuns.FROM_TOP_HINGE, 0).total().inches(), within(1e-10));
        double without = sway(RodRuns.FROM_TOP_HINGE, 0).rods().get(0).pull().pounds();
        assertThat(sway(RodRuns.FROM_TOP_HINGE, pounds).rods().get(0).pull().pounds())
                .isCloseTo(without + pounds, within(1e-6 * (without + pounds)));
    }

    @Test
    void stiffnessAndVirtualWorkAgreeInEveryState() {
        for (RodRuns runs : RodRuns.values())
            for (double pretension : new double[] {0, 5, 300}) {
                GateSag sag = sag(runs, pretension);
                assertThat(sag.total().inches())
                        .isCloseTo(
                                sag.byCause().total().inches(),
                                within(1e-9 * sag.total().inches()));
            }
    }
}
