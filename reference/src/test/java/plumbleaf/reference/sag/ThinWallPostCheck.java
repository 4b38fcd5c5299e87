package plumbleaf.reference.sag;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.GateForces;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.sag.Sags;
import plumbleaf.engine.section.Section;

/**
 * A thin-wall post lets a heavy leaf pull it over where a schedule 40 post of the same size does not.
 *
 * Source: common practice, no source: what fence builders say of 2-3/8 in. posts of 0.065 in. wall and of schedule 40 (0.154 in.).
 * Tolerance: none, a comparison: bending of the thin post alone drops the latch corner of a clad 4 ft leaf further than the quarter inch the eye
 * allows, and a person on the latch edge takes it past its allowable moment Fy Z / 1.67 (AISC 360 F8); schedule 40 keeps within both.
 */
class ThinWallPostCheck {
    private static final double EYE_IN = 0.25;

    /** Omega of bending. */
    private static final double OMEGA = 1.67;

    private static TestGate leafOn(String post) {
        return new TestGate(
                46, 66, 1, 95, post, 36, new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(24.3)), 60_000);
    }

    @Test
    void thinWallIsPulledOverScheduleFortyIsNot() {
        TestGate thin = leafOn("LIGHT-2.375x0.065");
        TestGate schedule40 = leafOn("F1083-REG-2");
        assertThat(TestGate.section("LIGHT-2.375x0.065").depth())
                .isEqualTo(TestGate.section("F1083-REG-2").depth());
        assertThat(dropOfPost(thin)).isGreaterThan(EYE_IN);
        assertThat(dropOfPost(schedule40)).isLessThan(EYE_IN);
        assertThat(momentRatio(thin)).isGreaterThan(1);
        assertThat(momentRatio(schedule40)).isLessThan(1);
    }

    private static double dropOfPost(TestGate gate) {
        HungGate hung = gate.hung();
        return Sags.drop(hung, hung.foot().likely()).post().inches();
    }

    private static double momentRatio(TestGate gate) {
        Section post = TestGate.section(gate.post());
        double most = 0;
        for (CaseForces each : GateForces.of(gate.hung(), HungLoads.person(Force.pounds(200))))
            if (each.combination() == Combination.D_L)
                most = Math.max(most, each.hingePost().size().poundInches());
        return most * OMEGA / (post.zxIn3() * post.yieldStress().psi());
    }
}
