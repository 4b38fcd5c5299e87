package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.support.Anchors;
import plumbleaf.engine.support.BasePlate;
import plumbleaf.engine.support.Slab;

/** Four anchors under a base plate: their pull balances the moment, and the post's corner is worst. */
class BasePlateAnchorsTest {
    private static final BasePlate PLATE = new BasePlate(Length.inches(8), Length.inches(0.75), Length.inches(1.25));
    private static final Slab SLAB =
            new Slab(Length.inches(6), Length.inches(12), Length.feet(10), Length.feet(5), Stress.psi(2500));

    private static BasePlateAnchors at(double alongLbIn, double acrossLbIn, double pushLb, BasePlate plate) {
        BaseAction action = new BaseAction(
                Force.ZERO,
                Force.pounds(pushLb),
                Force.ZERO,
                Moment.poundInches(alongLbIn),
                Moment.poundInches(acrossLbIn),
                Moment.ZERO);
        return BasePlateAnchors.of(
                new CombinedAction(Combination.D, "closed", "none", action),
                Examples.pipe(2.875, 0.203),
                plate,
                Anchors.USUAL,
                SLAB);
    }

    /** T (s/2) + C (B/2 - Y/2) = M, with C = T on a strip that bears 0.85 f'c / 2.31. */
    @Test
    void pullAndPressureBalanceTheMoment() {
        double moment = 12_000;
        double pair = 2 * at(moment, 0, 0, PLATE).pull().pounds();
        double strip = 0.85 * 2500 / 2.31 * 8;
        double y = pair / strip;
        assertThat(pair * 2.75 + pair * (4 - y / 2)).isCloseTo(moment, within(1e-6));
    }

    @Test
    void theCornerIsWorstAtFortyFiveDegrees() {
        double straight = at(12_000, 0, 0, PLATE).pull().pounds();
        double half = 12_000 / Math.sqrt(2);
        double slanting = at(half, half, 0, PLATE).pull().pounds();
        assertThat(slanting).isBetween(1.35 * straight, 1.42 * straight);
    }

    @Test
    void aPushIsSharedByFour() {
        assertThat(at(0, 0, 400, PLATE).push().pounds()).isCloseTo(100, within(1e-9));
    }

    /** A thin plate prises its anchors out; a thick one does not. */
    @Test
    void aThinPlatePrises() {
        BasePlate thin = new BasePlate(Length.inches(8), Length.inches(0.1875), Length.inches(1.25));
        assertThat(at(12_000, 0, 0, thin).prying().pounds()).isPositive();
        assertThat(at(12_000, 0, 0, PLATE).prying().pounds()).isZero();
        assertThat(at(12_000, 0, 0, thin).plateNeeded().inches()).isGreaterThan(0.1875);
    }

    @Test
    void aMomentBeyondAllBearingCrushes() {
        assertThat(at(400_000, 0, 0, PLATE).crushing()).isGreaterThan(1);
    }
}
