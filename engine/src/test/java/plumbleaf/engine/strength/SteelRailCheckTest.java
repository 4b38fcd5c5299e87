package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.section.Section;

class SteelRailCheckTest {
    private static final Section PIPE = Examples.pipe(1.66, 0.14);
    private static final Length TEN = Length.feet(10);

    @Test
    void sagsAsAClosedFormSays() {
        double simple = 5 * 0.4 * Math.pow(120, 4) / (384 * 29e6 * PIPE.ixIn4());
        assertThat(new SteelRailCheck("rail", PIPE, TEN, false, 0.4, 1, Force.ZERO)
                        .sag()
                        .inches())
                .isCloseTo(simple, within(1e-9));
        double runsOn = 0.0069 * 0.4 * Math.pow(120, 4) / (29e6 * PIPE.ixIn4());
        assertThat(new SteelRailCheck("rail", PIPE, TEN, true, 0.4, 1, Force.ZERO)
                        .sag()
                        .inches())
                .isCloseTo(runsOn, within(1e-9));
    }

    @Test
    void aRoundOneTakesTheVectorSumASquareOneTheSum() {
        double may = TubeStrength.of(PIPE).allowableX().poundInches();
        double down = 0.3 * 120 * 120 / 8;
        double across = 0.6 * 0.5 * 120 * 120 / 8;
        assertThat(new SteelRailCheck("rail", PIPE, TEN, false, 0.3, 0.5, Force.ZERO).windRatio())
                .isCloseTo(Math.sqrt(down * down + across * across) / may, within(1e-12));
        Section square = Examples.square(1.5, 0.12, "looked-up");
        double each = TubeStrength.of(square).allowableX().poundInches();
        assertThat(new SteelRailCheck("rail", square, TEN, false, 0.3, 0.5, Force.ZERO).windRatio())
                .isCloseTo((down + across) / each, within(1e-9));
    }

    @Test
    void twiceTheWindTakesMore() {
        double before = 0;
        for (double wind = 0; wind < 5; wind += 0.25) {
            double ratio = new SteelRailCheck("rail", PIPE, TEN, true, 0.3, wind, Force.ZERO).windRatio();
            assertThat(ratio).isGreaterThan(before);
            before = ratio;
        }
    }

    /** 135 lb on a light rail over 10 ft: Euler's load is pi2 E I / L2, and a bow grows about as 1 / (1 - P / Pe). */
    @Test
    void whatPressesItMakesItBowMore() {
        Section light = Examples.pipe(1.66, 0.065);
        Force pressed = Force.pounds(135);
        double euler = Math.PI * Math.PI * 29e6 * light.ixIn4() / (120 * 120);
        double grown = 1 / (1 - 135 / euler);
        SteelRailCheck slack = new SteelRailCheck("rail", light, TEN, false, 0.1, 0.4, Force.ZERO);
        SteelRailCheck pressedOne = new SteelRailCheck("rail", light, TEN, false, 0.1, 0.4, pressed);
        assertThat(pressedOne.sag().inches())
                .isCloseTo(
                        grown * slack.sag().inches(), within(0.01 * slack.sag().inches()));
        double axial = 135 * 1.67 / TubeStrength.compression(light, TEN).pounds();
        assertThat(axial).isLessThan(0.2);
        assertThat(pressedOne.windRatio()).isCloseTo(axial / 2 + grown * slack.windRatio(), within(0.01));
    }
}
