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
                "W", "w", Length.inches(side), Length.inches(side), wood, grade, timber, incised, "made up", "memory");
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
}
