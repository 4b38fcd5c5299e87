package plumbleaf.reference.wind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Exposure;
import plumbleaf.engine.job.SiteWind;
import plumbleaf.engine.job.WindEdition;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.wind.LegWind;
import plumbleaf.engine.wind.Screen;
import plumbleaf.engine.wind.Span;
import plumbleaf.engine.wind.TributaryWind;
import plumbleaf.engine.wind.WallCell;
import plumbleaf.engine.wind.WallStretch;
import plumbleaf.engine.wind.WallWind;
import plumbleaf.engine.wind.WindTables;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Wind on walls, signs and open screens: the wall table against the commentary's own equation, printed sign sheets, and a fence by hand.
 * Source: ASCE 7-16 commentary C29.3.1 equation behind Figure 29.3-1; sign calculation to ASCE 7-10 (W1); sign permit calculation, Everett WA, record
 * 1852116 page 79, to Table 29.4-2 (W2); sign calculation, Zephyrhills FL, record 63749 page 5 (W4: what a given push does to two posts); the fence by hand from Figure 29.3-1.
 * Tolerance: table cells exactly (the equation rounded to 0.05); sheets 0.1 %; the hand calculation 0.5 of its last digit.
 */
class WallWindCheck {
    private static final WindTables TABLES = StandardTables.load().wind();
    private static final SiteWind OPEN_COUNTRY = VelocityPressureCheck.site(115, Exposure.C, WindEdition.ASCE_7_16, 1);

    private static WallStretch fence(double feet) {
        return fence(feet, 0);
    }

    private static WallStretch fence(double feet, double returnFeet) {
        return new WallStretch(
                Length.feet(feet),
                Length.feet(6),
                Length.feet(6),
                Screen.flat(1),
                Length.feet(returnFeet),
                Length.ZERO);
    }

    @Test
    void everyCellIsTheCommentaryEquationRounded() {
        assertThat(TABLES.wall()).hasSize(84);
        for (WallCell cell : TABLES.wall()) {
            double x = Math.log(cell.aspect());
            double y = cell.heightRatio();
            double fit =
                    (1.563 + 0.008542 * x - 0.06148 * y + 0.009011 * x * x - 0.2603 * y * y - 0.08393 * y * x) / 0.85;
            assertThat(Math.round(fit / 0.05) * 0.05).as(cell.toString()).isCloseTo(cell.coefficient(), within(1e-9));
        }
    }

    @Test
    void smallSign() {
        Vector sheet = Vectors.one("wind", "W1");
        SiteWind site = VelocityPressureCheck.site(sheet.in("V_mph"), Exposure.D, WindEdition.ASCE_7_16, 1);
        Length side = Length.feet(Math.sqrt(sheet.in("As_ft2")));
        WallStretch sign =
                new WallStretch(side, side, Length.feet(sheet.in("h_ft")), Screen.flat(1), Length.ZERO, Length.ZERO);
        TributaryWind wind = WallWind.of(site, sign, TABLES).over(Length.ZERO, side);
        sheet.check("F_lb", wind.force().pounds());
        sheet.check("F_asd_lb", 0.6 * wind.force().pounds());
    }

    /** A flat pressure on a sign between two posts: the moment at grade, and what each post must have of section. */
    @Test
    void aSignOnTwoPosts() {
        Vector sheet = Vectors.one("wind", "W4");
        double areaFt2 = sheet.in("width_ft") * sheet.in("height_ft");
        double factors = sheet.in("factor_Fu") * sheet.in("factor_Ct");
        Pressure mean = Pressure.psf(sheet.in("p_psf") * factors);
        TributaryWind both =
                new TributaryWind(Force.pounds(mean.psf() * areaFt2), Length.feet(sheet.in("arm_ft")), mean, "given");
        sheet.check("M_lbft", both.momentAtGrade().inPoundFeet());
        TributaryWind one = both.times(sheet.in("share"));
        sheet.check("S_req_in3", one.momentAtGrade().poundInches() / sheet.in("Fb_psi"));
    }

    @Test
    void openSign() {
        Vector sheet = Vectors.one("wind", "W2");
        Screen screen = Screen.flat(sheet.in("eps"));
        Pressure velocity = Pressure.psf(sheet.in("qh_psf"));
        sheet.check("Cf", screen.openCoefficient(velocity, TABLES));
        sheet.check("p_psf", velocity.psf() * sheet.in("G") * screen.openCoefficient(velocity, TABLES));
    }

    @Test
    void openingsFactorByHand() {
        assertThat(Screen.flat(0.8).openingsFactor()).isCloseTo(0.9106, within(0.00005));
        assertThat(Screen.flat(1).openingsFactor()).isEqualTo(1);
    }

    /** Exposure C, 115 mph, 6 ft down to grade, long, 8 ft bays: 27.0 psf, 777 lb at 3.3 ft in allowable-stress design, 2,565 lb-ft. */
    @Test
    void insidePostOfALongFenceByHand() {
        WallWind wind = WallWind.of(OPEN_COUNTRY, fence(600), TABLES);
        TributaryWind post = wind.over(Length.feet(296), Length.feet(304));
        assertThat(post.windCase()).isEqualTo("A");
        assertThat(post.mean().psf()).isCloseTo(27.0, within(0.05));
        assertThat(0.6 * post.force().pounds()).isCloseTo(777, within(0.5));
        assertThat(post.height().inFeet()).isCloseTo(3.3, within(1e-9));
        assertThat(0.6 * post.momentAtGrade().inPoundFeet()).isCloseTo(2565, within(1.0));
    }

    /** First 6 ft of a 60 ft run: 62.3 psf; with a return corner of 12 ft, 0.60 of it. */
    @Test
    void firstStripFromAFreeEndByHand() {
        TributaryWind free = WallWind.of(OPEN_COUNTRY, fence(60), TABLES).over(Length.ZERO, Length.feet(6));
        assertThat(free.mean().psf()).isCloseTo(62.3, within(0.05));
        TributaryWind corner = WallWind.of(OPEN_COUNTRY, fence(60, 12), TABLES).over(Length.ZERO, Length.feet(6));
        assertThat(corner.mean().psf()).isCloseTo(0.6 * 62.3, within(0.05));
    }

    /** Half a bay of 8 ft at the free end, then 4 to 12 ft: 4 ft of 3.75; 2 ft of 3.75 and 6 of 2.45. */
    @Test
    void stripsAreIntegratedOverEachPostsShare() {
        WallWind wind = WallWind.of(OPEN_COUNTRY, fence(60), TABLES);
        double perCf = 62.3 / 3.75;
        assertThat(wind.over(Length.feet(4), Length.feet(12)).mean().psf())
                .isCloseTo(perCf * (2 * 3.75 + 6 * 2.45) / 8, within(0.1));
        assertThat(wind.over(Length.feet(48), Length.feet(56)).force())
                .isEqualTo(wind.over(Length.feet(4), Length.feet(12)).force());
    }

    /** Between B/s 10 and 13 the larger row counts: 4.00, 2.60, 2.00, then 1.50 from 3s to 4s. */
    @Test
    void betweenTheTwoSplitsTheLargerRow() {
        WallWind wind = WallWind.of(OPEN_COUNTRY, fence(66), TABLES);
        double perCf = 62.3 / 3.75;
        assertThat(wind.over(Length.feet(0), Length.feet(6)).mean().psf()).isCloseTo(perCf * 4.0, within(0.1));
        assertThat(wind.over(Length.feet(18), Length.feet(24)).mean().psf()).isCloseTo(27.0, within(0.1));
    }

    /** An opening of 16 ft in the middle makes two free ends; the post beside it takes more than twice its shut load. */
    @Test
    void anOpenGateMakesTwoFreeEnds() {
        Span opening = new Span(Length.feet(52), Length.feet(68));
        LegWind leg = LegWind.of(OPEN_COUNTRY, fence(120), List.of(opening), TABLES);
        Span beside = new Span(Length.feet(48), Length.feet(52));
        assertThat(leg.over(beside).force().pounds())
                .isGreaterThan(2 * leg.shut(beside).force().pounds());
    }

    /** Beyond ten heights the last strip of the table goes on to the far end: miles from it the coefficient is still 0.55, and the ends do not know of it. */
    @Test
    void aWallOfMilesHasTheEndsOfAHundredHeights() {
        WallWind miles = WallWind.gust(OPEN_COUNTRY, OPEN_COUNTRY.speed(), fence(5 * 5280), TABLES);
        WallWind hundred = WallWind.gust(OPEN_COUNTRY, OPEN_COUNTRY.speed(), fence(600), TABLES);
        assertThat(miles.over(Length.ZERO, Length.feet(60)).force().pounds())
                .isEqualTo(hundred.over(Length.ZERO, Length.feet(60)).force().pounds());
        assertThat(miles.over(Length.feet(13_000), Length.feet(13_008)).mean().psf())
                .isEqualTo(
                        hundred.over(Length.feet(296), Length.feet(304)).mean().psf());
    }
}
