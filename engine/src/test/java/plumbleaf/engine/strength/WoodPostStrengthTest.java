package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodGrade;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.WoodPost;

/** Wood posts by numbers done by hand: S of a 4x4 is 3.5^3/6 = 7.14583, of a 6x6 27.7292 in3. */
class WoodPostStrengthTest {
    private static WoodPost post(double side, double fb, boolean specific, boolean timber, boolean incised) {
        WoodGrade grade = new WoodGrade(
                "No. 2",
                Stress.psi(fb),
                Stress.psi(675),
                Stress.psi(175),
                Stress.psi(565),
                Stress.psi(1450),
                Stress.psi(1_400_000),
                Stress.psi(510_000),
                specific);
        WoodSpecies wood =
                new WoodSpecies("w", "w", 0.55, Moisture.percent(30), 7.4, 4.8, 0.00259, grade, "made up", "memory");
        return new WoodPost(
                "W",
                "w",
                false,
                Length.inches(side),
                Length.inches(side),
                wood,
                grade,
                timber,
                incised,
                "made up",
                "memory");
    }

    private static double allowed(WoodPost post) {
        return WoodPostStrength.of(post).allowableInWind().poundInches();
    }

    @Test
    void southernPineHasItsSizeInsideAndIsNotWetBelow1150() {
        assertThat(allowed(post(3.5, 1100, true, false, false))).isCloseTo(1100 * 1.6 * 7.145833, within(0.01));
    }

    @Test
    void otherLumberGrowsBySizeThenLosesToWater() {
        assertThat(allowed(post(3.5, 700, false, false, false))).isCloseTo(700 * 1.5 * 1.6 * 7.145833, within(0.01));
        assertThat(allowed(post(3.5, 900, false, false, false)))
                .isCloseTo(900 * 1.5 * 0.85 * 1.6 * 7.145833, within(0.01));
    }

    @Test
    void timbersHoldWetOrDryAndIncisingTakesAFifth() {
        assertThat(allowed(post(5.5, 850, false, true, false))).isCloseTo(850 * 1.6 * 27.729167, within(0.01));
        assertThat(allowed(post(5.5, 850, false, true, true))).isCloseTo(850 * 0.8 * 1.6 * 27.729167, within(0.01));
    }

    /** Half its moment in wind and hardly any weight: half used. With weight alone, the lasting duration. */
    @Test
    void usesItsMomentByTheDurationOfTheCombination() {
        WoodPostStrength strength = WoodPostStrength.of(post(3.5, 1100, true, false, false));
        Moment half = strength.allowableInWind().times(0.5);
        BaseAction bent = new BaseAction(Force.ZERO, Force.ZERO, Force.ZERO, Moment.ZERO, half, Moment.ZERO);
        assertThat(strength.ratio(new CombinedAction(Combination.D_W, "fence", "wind-in", bent), Length.feet(6)))
                .isCloseTo(0.5, within(1e-9));
        assertThat(strength.ratio(new CombinedAction(Combination.D, "fence", "none", bent), Length.feet(6)))
                .isCloseTo(0.5 * 1.6 / 0.9, within(1e-9));
    }

    @Test
    void moreWeightNeverUsesLess() {
        WoodPostStrength strength = WoodPostStrength.of(post(3.5, 1100, true, false, false));
        double before = 0;
        for (double down = 0; down < 4000; down += 250) {
            BaseAction action = new BaseAction(
                    Force.pounds(down),
                    Force.ZERO,
                    Force.ZERO,
                    Moment.ZERO,
                    strength.allowableInWind().times(0.3),
                    Moment.ZERO);
            double ratio =
                    strength.ratio(new CombinedAction(Combination.D_W, "fence", "wind-in", action), Length.feet(8));
            assertThat(ratio).isGreaterThanOrEqualTo(before);
            before = ratio;
        }
        assertThat(before).isGreaterThan(0.31);
    }

    /** A pole of 5 in.: S = pi 125/32 = 12.272 in3, four fifths of its Fb for the steam, nothing for water; its two moments as one. */
    @Test
    void aPoleBendsAnyWayAlike() {
        WoodPost square = post(5, 1950, true, false, false);
        WoodPost pole = new WoodPost(
                "P",
                "p",
                true,
                square.depth(),
                square.width(),
                square.species(),
                square.grade(),
                false,
                false,
                "made up",
                "memory");
        WoodPostStrength strength = WoodPostStrength.of(pole);
        assertThat(strength.allowableInWind().poundInches()).isCloseTo(1950 * 0.8 * 1.6 * 12.27185, within(0.1));
        Moment half = strength.allowableInWind().times(0.5);
        BaseAction both = new BaseAction(Force.ZERO, Force.ZERO, Force.ZERO, half, half, Moment.ZERO);
        assertThat(strength.ratio(new CombinedAction(Combination.D_W, "a", "b", both), Length.feet(6)))
                .isCloseTo(Math.sqrt(0.5), within(1e-9));
        assertThat(pole.jIn4()).isCloseTo(Math.PI * 625 / 32, within(1e-9));
    }

    /** A square of side a twists with J = 0.1406 a4 and tears at T / (0.208 a3). */
    @Test
    void aTwistedPostShears() {
        WoodPost post = post(5.5, 850, false, true, false);
        assertThat(post.jIn4() / Math.pow(5.5, 4)).isCloseTo(0.1406, within(0.0005));
        BaseAction twisted =
                new BaseAction(Force.ZERO, Force.ZERO, Force.ZERO, Moment.ZERO, Moment.ZERO, Moment.poundInches(5000));
        double ratio =
                WoodPostStrength.of(post).ratio(new CombinedAction(Combination.D_W, "a", "b", twisted), Length.feet(6));
        assertThat(ratio).isCloseTo(5000 / (0.208 * 5.5 * 5.5 * 5.5) / (175 * 1.6), within(0.001));
    }

    /** Drilled 9/16 in. along the run: I = 76.255 - 0.5625 x 5.5^3 / 12 = 68.457 in4 for bending along, hardly less across. */
    @Test
    void aHoleTakesAwayWhatItCutsThrough() {
        WoodPostStrength strength = WoodPostStrength.of(post(5.5, 850, false, true, false));
        Moment moment = Moment.poundInches(10_000);
        Length hole = Length.inches(0.5625);
        assertThat(strength.drilled(moment, Moment.ZERO, hole, 1))
                .isCloseTo(10_000 * 2.75 / 68.457 / 850, within(1e-4));
        assertThat(strength.drilled(Moment.ZERO, moment, hole, 1))
                .isCloseTo(10_000 * 2.75 / 76.174 / 850, within(1e-4));
    }
}
