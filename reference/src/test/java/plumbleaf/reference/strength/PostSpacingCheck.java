package plumbleaf.reference.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Exposure;
import plumbleaf.engine.job.RiskCategory;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.job.WindEdition;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.strength.PostSpacing;
import plumbleaf.engine.wind.LegWind;
import plumbleaf.engine.wind.Screen;
import plumbleaf.engine.wind.WallStretch;
import plumbleaf.jobfile.catalogue.StandardTables;

/**
 * The widest spacing of posts on a 6 ft solid fence in open country at 115 mph.
 * Source: hand calculation by ASCE 7-16 29.3: 2,565 lb-ft at 8 ft in the middle of a long fence (wind by hand), in proportion to the spacing.
 * Tolerance: 0.1 %, the digits of the hand calculation.
 */
class PostSpacingCheck {
    private static final Length LENGTH = Length.feet(600);

    private static LegWind fence() {
        SiteWind site = new SiteWind(Speed.mph(115), Exposure.C, WindEdition.ASCE_7_16, RiskCategory.I, 1, 1);
        WallStretch stretch =
                new WallStretch(LENGTH, Length.feet(6), Length.feet(6), Screen.flat(1), Length.ZERO, Length.ZERO);
        return LegWind.of(site, stretch, List.of(), StandardTables.load().wind());
    }

    private static Length longest(LegWind leg, Length from, Moment allowable, Length most) {
        return PostSpacing.longestFrom((fromIn, toIn) -> new PostSpacing.Met(leg, allowable), LENGTH, from, most);
    }

    @Test
    void inTheMiddleInProportion() {
        Length widest = longest(fence(), Length.feet(300), Moment.poundFeet(2565 * 6.0 / 8), Length.feet(10));
        assertThat(widest.inFeet()).isCloseTo(6, within(0.006));
    }

    @Test
    void neverMoreThanRailsAllowAndLessAtAFreeEnd() {
        LegWind leg = fence();
        Moment strong = Moment.poundFeet(1e6);
        assertThat(longest(leg, Length.feet(300), strong, Length.feet(8))).isEqualTo(Length.feet(8));
        Moment weak = Moment.poundFeet(1139);
        assertThat(longest(leg, Length.ZERO, weak, Length.feet(8)))
                .isLessThan(longest(leg, Length.feet(300), weak, Length.feet(8)));
    }

    /** The search for posts is exact only while place plus answer never falls. */
    @Test
    void placePlusAnswerNeverFalls() {
        LegWind leg = fence();
        double before = 0;
        for (int feet = 0; feet <= 600; feet += 2) {
            double reach = feet
                    + longest(leg, Length.feet(feet), Moment.poundFeet(1139), Length.feet(8))
                            .inFeet();
            assertThat(reach).as("from " + feet + " ft").isGreaterThanOrEqualTo(before - 1e-6);
            before = reach;
        }
    }
}
