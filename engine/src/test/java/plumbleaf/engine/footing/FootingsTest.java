package plumbleaf.engine.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.BaseAction;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.action.Combinations;
import plumbleaf.engine.action.CombinedAction;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.DesignBasis;
import plumbleaf.engine.job.Frost;
import plumbleaf.engine.job.FrostMonths;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.job.SoilState;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Density;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.wind.TributaryWind;

class FootingsTest {
    private static final SoilTables TABLES = new SoilTables(
            List.of(new PresumedSoil(
                    4, "sand", Pressure.psf(2000), Pressure.psf(150), 0.25, Pressure.ZERO, "test", "test")),
            List.of(new SandFeel(
                    SoilState.MEDIUM,
                    SoilRate.poundsPerCubicInch(24.3),
                    SoilRate.poundsPerCubicInch(16.2),
                    Angle.degrees(32),
                    Density.pcf(115),
                    "test")),
            List.of(new ClayFeel(SoilState.FIRM, Pressure.psf(1000), "test")));

    private static Soil soil(SoilKind kind, Length looseTop, Slope fall) {
        return new Soil(kind, SoilState.MEDIUM, false, 4, Stated.open(), looseTop, fall);
    }

    private static final Soil SAND = soil(SoilKind.SAND, Length.ZERO, Slope.ZERO);

    /** Strength-level wind whose 0.6 is 777 lb at 3.3 ft. */
    private static FootingDemand demand(double share) {
        TributaryWind wind =
                new TributaryWind(Force.pounds(777 / 0.6 * share), Length.feet(3.3), Pressure.psf(27), "A");
        return new FootingDemand("F3", Combinations.onLinePost(Force.pounds(60), wind), false, false, Length.ZERO);
    }

    private static FootingDesign size(FootingDemand demand, double holeIn, Soil soil, DesignBasis basis) {
        return Footings.size(
                demand,
                Length.inches(holeIn),
                Stated.open(),
                soil,
                new Frost(Length.inches(30), "building office", FrostMonths.UNSAID),
                TABLES,
                FootingRules.USUAL,
                basis);
    }

    /** The hand example: class 4, 12 in. hole, 7.36 ft. */
    @Test
    void windOnCodeSoilGovernsWhenEngineered() {
        FootingDesign design = size(demand(1), 12, SAND, DesignBasis.ENGINEERED);
        assertThat(design.depthNeeded().inFeet()).isCloseTo(7.36, within(0.005));
        assertThat(design.hole().depth().inches()).isEqualTo(90);
        assertThat(design.governedBy()).isEqualTo(DepthCause.LATERAL);
        assertThat(design.findings()).allMatch(finding -> finding.severity() == Severity.PASS);
    }

    /** A push near the ground asks for more depth than a greater moment that comes of a small push high up: the case named is the one that was worked out. */
    @Test
    void theDeepestCaseIsNamedWithItsNumbers() {
        CombinedAction low = new CombinedAction(
                Combination.D_W, "closed", "wind-in", BaseAction.across(Force.pounds(420), Length.inches(36)));
        CombinedAction high = new CombinedAction(
                Combination.D_L_W, "worst", "wind-in", BaseAction.across(Force.pounds(200), Length.inches(84)));
        assertThat(high.action().size()).isGreaterThan(low.action().size());
        FootingDesign design = size(
                new FootingDemand("F5", List.of(low, high), false, false, Length.ZERO),
                12,
                soil(SoilKind.SAND, Length.inches(6), Slope.ZERO),
                DesignBasis.CUSTOMARY);
        DepthNeed code = design.needs().get(design.needs().size() - 1);
        assertThat(code.binds()).isFalse();
        assertThat(code.lateral().orElseThrow().worst()).isEqualTo(low);
        double dFt = code.lateral().orElseThrow().below().inFeet();
        double aFt = 2.34 * 420 / (150 * dFt / 3);
        assertThat(dFt).isCloseTo(0.5 * aFt * (1 + Math.sqrt(1 + 4.36 * 3.5 / aFt)), within(1e-9));
        assertThat(code.depth().inches()).isCloseTo(dFt * 12 + 6, within(1e-9));
    }

    /** Stretched fabric never lets go: IBC 2021 1806.3.4 doubles the lateral bearing for short-term loads alone. */
    @Test
    void aPullThatStaysCountsOnTheUndoubledSoil() {
        BaseAction pull = BaseAction.along(Force.pounds(221), Length.inches(60));
        for (Combination combination : List.of(Combination.D, Combination.D_W)) {
            FootingDemand demand = new FootingDemand(
                    "F1", List.of(new CombinedAction(combination, "fence", "none", pull)), true, false, Length.ZERO);
            LateralWork work = size(demand, 12, SAND, DesignBasis.ENGINEERED).needs().stream()
                    .flatMap(need -> need.lateral().stream())
                    .findFirst()
                    .orElseThrow();
            Pressure counted = Pressure.psf(combination == Combination.D ? 150 : 300);
            assertThat(work.doubled()).isEqualTo(combination == Combination.D_W);
            assertThat(work.below().inches())
                    .isCloseTo(
                            PoleDepth.nonconstrained(pull.push(), pull.size(), counted, Length.inches(12))
                                    .inches(),
                            within(1e-9));
        }
    }

    @Test
    void windIsACautionOnTheCustomaryBasis() {
        FootingDesign design = size(demand(1), 12, SAND, DesignBasis.CUSTOMARY);
        assertThat(design.hole().depth().inches()).isEqualTo(30);
        assertThat(design.governedBy()).isEqualTo(DepthCause.FROST);
        Finding wind = design.findings().stream()
                .filter(finding -> finding.id().equals("footing.code"))
                .findFirst()
                .orElseThrow();
        assertThat(wind.severity()).isEqualTo(Severity.CAUTION);
        assertThat(wind.message())
                .isEqualTo("Footing F3: 2' 6\" deep, 7' 4-5/16\" needed for code loads on code soil, not binding on the"
                        + " customary basis; see the rated gust.");
    }

    @Test
    void moreWindNeverLessDepthAndAWiderHoleNeverDeeper() {
        double before = 0;
        for (int share = 1; share <= 20; share++) {
            double needed = size(demand(share / 10.0), 12, SAND, DesignBasis.ENGINEERED)
                    .depthNeeded()
                    .inches();
            assertThat(needed).isGreaterThanOrEqualTo(before);
            before = needed;
        }
        double wider = Double.MAX_VALUE;
        for (int hole = 8; hole <= 24; hole++) {
            double needed = size(demand(1), hole, SAND, DesignBasis.ENGINEERED)
                    .depthNeeded()
                    .inches();
            assertThat(needed).isLessThanOrEqualTo(wider);
            wider = needed;
        }
    }

    @Test
    void fallingGroundAndALooseTopNeedMore() {
        double level =
                size(demand(1), 12, SAND, DesignBasis.ENGINEERED).depthNeeded().inches();
        Soil falling = soil(SoilKind.SAND, Length.ZERO, Slope.percent(20));
        Soil loose = soil(SoilKind.SAND, Length.inches(6), Slope.ZERO);
        assertThat(size(demand(1), 12, falling, DesignBasis.ENGINEERED)
                        .depthNeeded()
                        .inches())
                .isGreaterThan(level);
        assertThat(size(demand(1), 12, loose, DesignBasis.ENGINEERED)
                        .depthNeeded()
                        .inches())
                .isGreaterThan(level + 6);
    }

    @Test
    void fillCannotBeJudged() {
        Soil fill = soil(SoilKind.FILL, Length.ZERO, Slope.ZERO);
        FootingDesign design = size(demand(1), 12, fill, DesignBasis.ENGINEERED);
        assertThat(design.findings())
                .anyMatch(finding -> finding.id().equals("footing.soil") && finding.severity() == Severity.CANNOT_SAY);
        assertThat(design.needs()).extracting(DepthNeed::cause).doesNotContain(DepthCause.LATERAL);
    }

    @Test
    void aPinnedDepthIsKeptAndItsShortfallNamed() {
        FootingDesign design = Footings.size(
                demand(1),
                Length.inches(12),
                Stated.of(Length.inches(36)),
                SAND,
                new Frost(Length.inches(40), "building office", FrostMonths.UNSAID),
                TABLES,
                FootingRules.USUAL,
                DesignBasis.ENGINEERED);
        assertThat(design.governedBy()).isEqualTo(DepthCause.GIVEN);
        assertThat(design.hole().depth().inches()).isEqualTo(36);
        assertThat(design.findings())
                .filteredOn(finding -> finding.severity() == Severity.MUST_FIX)
                .extracting(Finding::id)
                .containsExactlyInAnyOrder("footing.frost", "footing.depth");
    }

    @Test
    void theStepIsNotTakenForAHair() {
        assertThat(FootingRules.USUAL.rounded(Length.inches(30.0000000001)).inches())
                .isEqualTo(30);
        assertThat(FootingRules.USUAL.rounded(Length.inches(30.01)).inches()).isEqualTo(36);
    }
}
