package plumbleaf.reference.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.PoleDepth;
import plumbleaf.engine.footing.PoleStrength;
import plumbleaf.engine.job.Exposure;
import plumbleaf.engine.job.RiskCategory;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.job.SoilState;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.WindEdition;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.strength.GustPart;
import plumbleaf.engine.strength.RatedGust;
import plumbleaf.engine.strength.TubeStrength;
import plumbleaf.engine.wind.Screen;
import plumbleaf.engine.wind.TributaryWind;
import plumbleaf.engine.wind.WallStretch;
import plumbleaf.engine.wind.WallWind;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;

/**
 * The gust at which an inside post and its footing reach their limits, on a 6 ft solid fence with 8 ft bays in open country at 115 mph.
 * Source: hand calculation by ASCE 7-16 26.10 and 29.3, AISC 360-22 F8, IBC 1807.3.2.1, and UFC 3-220-20 chapter 6: posts 77 and 106 mph, 10 x 36 in. hole
 * in class 4 doubled 50 mph, in sand of 32 degrees 83 mph to its ultimate.
 * Tolerance: half of the last digit given.
 */
class RatedGustCheck {
    private static final Speed AT = Speed.mph(115);
    private static final SiteWind SITE = new SiteWind(AT, Exposure.C, WindEdition.ASCE_7_16, RiskCategory.I, 1, 1);

    private static TributaryWind insidePost() {
        WallStretch fence = new WallStretch(
                Length.feet(600), Length.feet(6), Length.feet(6), Screen.flat(1), Length.ZERO, Length.ZERO);
        return WallWind.gust(SITE, AT, fence, StandardTables.load().wind()).over(Length.feet(296), Length.feet(304));
    }

    private static double postMph(String id) {
        Section section = StandardCatalogue.load().section(id).orElseThrow();
        TubeStrength strength = TubeStrength.of(section);
        GustPart post = new GustPart(
                "post",
                0,
                insidePost().momentAtGrade().poundInches(),
                strength.allowableX().poundInches(),
                strength.bendingX().poundInches());
        return RatedGust.of(AT, List.of(post)).allowable().mph();
    }

    @Test
    void postsOfScheduleForty() {
        assertThat(postMph("F1083-REG-2")).isCloseTo(77, within(0.5));
        assertThat(postMph("F1083-REG-2.5")).isCloseTo(106, within(0.5));
    }

    @Test
    void tenInchHoleThreeFeetDeep() {
        Soil sand = new Soil(SoilKind.SAND, SoilState.MEDIUM, false, 4, Stated.open(), Length.ZERO, Slope.ZERO);
        HoleSize hole = new HoleSize(Length.inches(10), Length.inches(36));
        TributaryWind wind = insidePost();
        GustPart footing = new GustPart(
                "footing",
                0,
                wind.force().pounds(),
                PoleDepth.allowedPush(hole.depth(), wind.height(), Pressure.psf(300), hole.diameter())
                        .pounds(),
                PoleStrength.expected(
                                hole, wind.height(), sand, StandardTables.load().soils())
                        .orElseThrow()
                        .pounds());
        assertThat(RatedGust.allowableOf(AT, footing).mph()).isCloseTo(50, within(0.5));
        assertThat(RatedGust.ultimateOf(AT, footing).mph()).isCloseTo(83, within(0.5));
    }
}
