package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.Combinations;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.catalogue.Board;
import plumbleaf.engine.catalogue.BoardTop;
import plumbleaf.engine.catalogue.Boarding;
import plumbleaf.engine.catalogue.Spacing;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.quantity.Area;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Speed;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Timber;
import plumbleaf.engine.wind.TributaryWind;

class PostCheckTest {
    private static List<CombinedAction> actions(double strengthLb) {
        TributaryWind wind = new TributaryWind(Force.pounds(strengthLb), Length.feet(3.3), Pressure.psf(27), "A");
        return Combinations.onLinePost(Force.pounds(60), wind);
    }

    private static List<Severity> severities(DesignBasis basis, double strengthLb, String id) {
        return PostCheck.of("P3", Examples.pipe(2.375, 0.154), Length.feet(6), actions(strengthLb), basis)
                .findings()
                .stream()
                .filter(finding -> finding.id().equals(id))
                .map(Finding::severity)
                .toList();
    }

    @Test
    void aFailureUnderWindIsAMustFixOnlyWhenEngineered() {
        assertThat(severities(DesignBasis.ENGINEERED, 1295, "post.wind")).containsExactly(Severity.MUST_FIX);
        assertThat(severities(DesignBasis.CUSTOMARY, 1295, "post.wind")).containsExactly(Severity.CAUTION);
        assertThat(severities(DesignBasis.CUSTOMARY, 200, "post.wind")).containsExactly(Severity.PASS);
        assertThat(severities(DesignBasis.CUSTOMARY, 1295, "post.strength")).containsExactly(Severity.PASS);
    }

    @Test
    void anUnvouchedYieldIsSaid() {
        PostCheck check = PostCheck.of(
                "P3", Examples.square(2, 0.12, "unverified"), Length.feet(6), actions(100), DesignBasis.ENGINEERED);
        assertThat(check.findings())
                .extracting(Finding::message)
                .contains("Post P3: nobody guarantees the yield of example tube; 36 ksi is assumed. Ask the mill or the"
                        + " yard for a certificate.");
    }

    @Test
    void moreWindNeverLessUtilisation() {
        double before = 0;
        for (int pounds = 0; pounds <= 2000; pounds += 50) {
            double now = PostCheck.of(
                            "P3", Examples.pipe(2.375, 0.154), Length.feet(6), actions(pounds), DesignBasis.ENGINEERED)
                    .utilisation();
            assertThat(now).isGreaterThanOrEqualTo(before);
            before = now;
        }
    }

    @Test
    void theGreatestSpacingIsWhereUtilisationIsOne() {
        Length spacing = GreatestSpacing.solve(
                wide -> PostCheck.of(
                                "P3",
                                Examples.pipe(2.375, 0.154),
                                Length.feet(6),
                                actions(1295 / 8.0 * wide.inFeet()),
                                DesignBasis.ENGINEERED)
                        .utilisation(),
                Length.feet(10));
        double at = PostCheck.of(
                        "P3",
                        Examples.pipe(2.375, 0.154),
                        Length.feet(6),
                        actions(1295 / 8.0 * spacing.inFeet()),
                        DesignBasis.ENGINEERED)
                .utilisation();
        assertThat(spacing.inFeet()).isBetween(3.0, 6.0);
        assertThat(at).isCloseTo(1, within(1e-6));
    }

    /** 100 lb at 66 in. on a 72 in. cantilever of I = 0.666: 100 66^2 (216 - 66) / (6 29e6 0.666). */
    @Test
    void theTopMovesByBendingAndByTheFooting() {
        Length height = Length.inches(66);
        Length top = Length.inches(72);
        double bending =
                PostDeflection.ofPost(Force.pounds(100), height, top, 0.666).inches();
        assertThat(bending).isCloseTo(100.0 * 66 * 66 * 150 / (6 * 29e6 * 0.666), within(1e-12));
        HoleSize hole = new HoleSize(Length.inches(10), Length.inches(36));
        PierSpring soft = new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(8.1)).spring(hole);
        PierSpring stiff = new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(64.8)).spring(hole);
        double inSoft = PostDeflection.atTop(Force.pounds(100), height, top, 0.666, soft)
                .inches();
        double inStiff = PostDeflection.atTop(Force.pounds(100), height, top, 0.666, stiff)
                .inches();
        assertThat(inSoft).isGreaterThan(inStiff);
        assertThat((inSoft - bending) / (inStiff - bending)).isCloseTo(8, within(1e-9));
    }

    @Test
    void theRatedGustOfAPartGrowsWithTheRootOfItsStrength() {
        GustPart part = new GustPart("post", 0, 1000, 600, 1000);
        assertThat(RatedGust.allowableOf(Speed.mph(100), part).mph()).isCloseTo(100, within(1e-9));
        GustPart stronger = new GustPart("post", 0, 1000, 2400, 4000);
        RatedGust rated = RatedGust.of(Speed.mph(100), List.of(stronger, part));
        assertThat(rated.allowable().mph()).isCloseTo(100, within(1e-9));
        assertThat(RatedGust.ultimateOf(Speed.mph(100), stronger).mph()).isCloseTo(200, within(1e-9));
    }

    /** 2 x 4 on edge, 96 in., 1 lb/in down: M 1152, S 3.0625; Fb 700 x 1.5 = 1050, below 1150 so not reduced; x 0.9. */
    @Test
    void aRailByHand() {
        Timber rail = new Timber(Length.inches(3.5), Length.inches(1.5), Examples.CEDAR);
        RailCheck check = new RailCheck(rail, Length.inches(96), 1, 0);
        assertThat(check.standingRatio()).isCloseTo(1152 / 3.0625 / (1050 * 0.9), within(1e-12));
        assertThat(check.windRatio()).isCloseTo(1152 / 3.0625 / (1050 * 1.6), within(1e-12));
        double i = 1.5 * 3.5 * 3.5 * 3.5 / 12;
        assertThat(check.sag(2).inches()).isCloseTo(2 * 5 * Math.pow(96, 4) / (384 * 900_000 * i), within(1e-12));
        RailCheck windy = new RailCheck(rail, Length.inches(96), 0, 10);
        double flat = 0.6 * 10 * 96 * 96 / 8.0 / (3.5 * 1.5 * 1.5 / 6) / (1050 * 1.1 * 1.6);
        assertThat(windy.windRatio()).isCloseTo(flat, within(1e-12));
    }

    /** 27 psf on a crossing of 5.5 x 24 in.: 0.6 x 27 x 0.9167 / 2 = 7.4 lb a nail; 6.7 is what a smooth 0.113 nail keeps when wet. */
    @Test
    void smoothNailsLetGoOfWetPickets() {
        Force nail =
                Withdrawal.allowed(Withdrawal.nailPerInch(0.36, Length.inches(0.113)), Length.inches(1.375), 1.6, 0.25);
        Finding finding =
                PicketCheck.of("R1", Pressure.psf(27), Area.squareInches(5.5 * 24), 2, nail, DesignBasis.ENGINEERED);
        assertThat(finding.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(finding.message())
                .isEqualTo("Pickets of R1: suction pulls each fastener with 7.4 lb; it may take 6.7 lb.");
    }

    /** 100 in. of an end zone at 2 a unit, then half of it: one is met at 64 in., behind the kink at 40, in a dozen looks where halving takes forty. */
    @Test
    void theGreatestSpacingIsFoundInFewLooks() {
        int[] looks = {0};
        Length spacing = GreatestSpacing.solve(
                tried -> {
                    looks[0]++;
                    double inches = tried.inches();
                    return (2 * Math.min(inches, 40) + Math.max(0, inches - 40)) / 104;
                },
                Length.inches(120));
        assertThat(spacing.inches()).isCloseTo(64, within(1e-9)).isLessThanOrEqualTo(64);
        assertThat(looks[0]).isLessThan(16);
    }

    @Test
    void aPostThatBearsNothingStandsNowhere() {
        assertThat(GreatestSpacing.solve(tried -> tried.isZero() ? 0 : Double.POSITIVE_INFINITY, Length.inches(120)))
                .isLessThan(Length.inches(1e-6));
    }

    /** Three rails in 72 in., 7 in. from the edges: inner gap 29 in., an end rail 21.5; the inner one is busiest. */
    @Test
    void theBusiestRailOfABay() {
        Boarding style = new Boarding(
                new Board(Length.inches(5.5), Length.inches(0.625), "western_redcedar"),
                new Spacing(Offset.inches(0.125), Offset.inches(0.0625), Offset.inches(0.25), Length.inches(2.5)),
                BoardTop.FLAT,
                false,
                new Board(Length.inches(3.5), Length.inches(1.5), "western_redcedar"),
                2);
        BayChecks bay = BayChecks.of(
                "B2",
                Length.inches(96),
                Length.inches(72),
                HangingBoards.asked(Length.inches(7)),
                3,
                Length.inches(7),
                style,
                Examples.CEDAR,
                Examples.CEDAR);
        assertThat(bay.busiestShare().inches()).isEqualTo(29);
        RailCheck rail = bay.railCheck(Pressure.psf(27));
        assertThat(rail.windLbPerIn()).isCloseTo(27 / 144.0 * 29, within(1e-12));
        double wetPci = Examples.CEDAR.densityAt(Moisture.WET).perCubicInch();
        assertThat(rail.downLbPerIn()).isCloseTo(wetPci * (3.5 * 1.5 + 0.625 * 72 / 3), within(1e-12));
        assertThat(bay.findings(Pressure.psf(27), Length.inches(0.113), Length.inches(1.375), DesignBasis.CUSTOMARY))
                .extracting(Finding::id)
                .containsExactly("rail.wind", "rail.weight", "rail.sag", "picket.pull");
    }

    /** lend = B sqrt(1 - 1/8) = 1.87 in. on 2 x 2: an inch from the open top, pull and tilt are halved. */
    @Test
    void aPlateNearTheOpenTopHasHalfTheWall() {
        Section post = Examples.square(2, 0.12, "looked-up");
        HingePlate near = new HingePlate(Length.inches(3), Length.inches(0.25), Length.inches(1));
        HingePlate below = new HingePlate(Length.inches(3), Length.inches(0.25), Length.inches(2));
        assertThat(near.isNearOpenEnd(post)).isTrue();
        assertThat(near.allowable(post, 0.8).pounds())
                .isCloseTo(below.allowable(post, 0.8).pounds() / 2, within(1e-9));
        assertThat(near.allowableTilt(post, 0.8).poundInches())
                .isCloseTo(below.allowableTilt(post, 0.8).poundInches() / 2, within(1e-9));
    }
}
