package plumbleaf.engine.footing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.job.Soil;
import plumbleaf.engine.job.SoilKind;
import plumbleaf.engine.job.SoilNumbers;
import plumbleaf.engine.job.SoilState;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Density;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.SoilRate;

/** Traps a search over holes would fall into: a wider hole never comes out weaker, a deeper one never turns more. 400 random grounds, seed 20271. */
class WiderAndDeeperTest {
    private static final int GROUNDS = 400;

    private static final SoilTables TABLES = new SoilTables(
            List.of(new PresumedSoil(
                    4, "sand", Pressure.psf(2000), Pressure.psf(150), 0.25, Pressure.ZERO, "test", "test")),
            List.of(sand(SoilState.LOOSE, 8.1, 29), sand(SoilState.MEDIUM, 24.3, 32), sand(SoilState.DENSE, 64.8, 36)),
            List.of(
                    new ClayFeel(SoilState.SOFT, Pressure.psf(500), "test"),
                    new ClayFeel(SoilState.FIRM, Pressure.psf(1000), "test"),
                    new ClayFeel(SoilState.STIFF, Pressure.psf(2000), "test")));

    private static SandFeel sand(SoilState state, double nh, double friction) {
        return new SandFeel(
                state,
                SoilRate.poundsPerCubicInch(nh),
                SoilRate.poundsPerCubicInch(nh / 2),
                Angle.degrees(friction),
                Density.pcf(115),
                "test");
    }

    private static Soil ground(Random random) {
        boolean clay = random.nextBoolean();
        SoilState[] states = clay
                ? new SoilState[] {SoilState.SOFT, SoilState.FIRM, SoilState.STIFF}
                : new SoilState[] {SoilState.LOOSE, SoilState.MEDIUM, SoilState.DENSE};
        Stated<Pressure> said = clay && random.nextInt(3) == 0
                ? Stated.of(Pressure.psf(300 + 2000 * random.nextDouble()))
                : Stated.open();
        return new Soil(
                clay ? SoilKind.CLAY : SoilKind.SAND,
                states[random.nextInt(3)],
                random.nextBoolean(),
                4,
                Stated.open(),
                Length.inches(random.nextInt(3) * 6),
                new Slope(random.nextDouble() * 0.4),
                new SoilNumbers(said, Stated.open(), Length.inches(random.nextInt(2) * 9), Length.ZERO, List.of()));
    }

    @Test
    void aWiderHoleIsNeverWeaker() {
        Random random = new Random(20271);
        for (int i = 0; i < GROUNDS; i++) {
            Soil soil = ground(random);
            Length deep = Length.inches(36 + random.nextInt(48));
            Length height = Length.inches(random.nextDouble() * 80);
            double before = 0;
            for (int wide : new int[] {8, 9, 10, 12, 16, 18, 24}) {
                HoleSize hole = new HoleSize(Length.inches(wide), deep);
                double here = PoleStrength.expected(hole, height, soil, TABLES)
                        .map(Force::pounds)
                        .orElse(before);
                assertThat(here).as(soil + " " + hole).isGreaterThanOrEqualTo(before * (1 - 1e-9));
                before = here;
            }
        }
    }

    @Test
    void aWiderHoleNeedsNoMoreDepthByTheCode() {
        Random random = new Random(20271);
        for (int i = 0; i < GROUNDS; i++) {
            Pressure lateral = LateralSoil.of(ground(random), TABLES, false).perFoot();
            Force push = Force.pounds(random.nextDouble() * 900);
            Moment moment = Moment.poundInches(random.nextDouble() * 40_000);
            double before = Double.MAX_VALUE;
            for (int wide : new int[] {8, 9, 10, 12, 16, 18, 24}) {
                double here = PoleDepth.nonconstrained(push, moment, lateral, Length.inches(wide))
                        .inches();
                assertThat(here).isLessThanOrEqualTo(before * (1 + 1e-9));
                before = here;
            }
        }
    }

    @Test
    void aDeeperHoleNeverTurnsMore() {
        Random random = new Random(20271);
        for (int i = 0; i < GROUNDS; i++) {
            Soil soil = ground(random);
            SoilBand band = SoilBand.of(soil, TABLES).orElseThrow();
            Force push = Force.pounds(random.nextDouble() * 300);
            Moment moment = Moment.poundInches(500 + random.nextDouble() * 20_000);
            double before = Double.MAX_VALUE;
            for (int deep = 24; deep <= 96; deep += 6) {
                double here = band.soft()
                        .spring(new HoleSize(Length.inches(12), Length.inches(deep)), soil.deadTop())
                        .under(push, moment)
                        .turn()
                        .radians();
                assertThat(here).as(soil + " at " + deep).isLessThanOrEqualTo(before * (1 + 1e-9));
                before = here;
            }
        }
    }
}
