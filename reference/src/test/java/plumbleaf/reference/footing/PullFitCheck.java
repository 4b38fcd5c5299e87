package plumbleaf.reference.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.footing.PullFit;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.support.PullTest;

/**
 * A pull test read back: readings made from a known soil and a known depth return both.
 * Source: rigid pier in elastic soil as Broms 1964 (from memory), and a cantilever's closed form; field practice, a pull of 75 lb at 54 in. over a pier of
 * 36 in. turns a moment alone by 0.69 of it.
 * Tolerance: 1e-9 of the soil's value; 0.005 on the printed 0.69.
 */
class PullFitCheck {
    private static final double EI = 29e6 * 1.53;
    private static final double EXACT = 1e-9;

    private static PullTest readings(SoilStiffness soil, double depthIn, double pullLb, double atIn) {
        PierSpring pier = soil.spring(new HoleSize(Length.inches(10), Length.inches(depthIn)));
        PierSpring.Motion moved = pier.under(Force.pounds(pullLb), Moment.poundInches(pullLb * atIn));
        return new PullTest(
                Force.pounds(pullLb),
                Length.inches(atIn),
                Length.inches(3),
                read(moved, pullLb, atIn, 3),
                Length.inches(66),
                read(moved, pullLb, atIn, 66),
                Length.ZERO);
    }

    private static Length read(PierSpring.Motion moved, double pullLb, double atIn, double zIn) {
        double bent = zIn <= atIn
                ? pullLb * zIn * zIn * (3 * atIn - zIn) / (6 * EI)
                : pullLb * atIn * atIn * (3 * zIn - atIn) / (6 * EI);
        return Length.inches(moved.sideways().inches() + moved.turn().radians() * zIn + bent);
    }

    @ParameterizedTest
    @CsvSource({"8.1, 24, 75, 54", "24.3, 36, 50, 54", "64.8, 30, 100, 60", "3.7, 48, 60, 40"})
    void sandIsReadBack(double nh, double depthIn, double pullLb, double atIn) {
        SoilStiffness soil = new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(nh));
        PullTest test = readings(soil, depthIn, pullLb, atIn);
        for (Length depth : new Length[] {Length.inches(depthIn), Length.ZERO}) {
            PullFit fit = PullFit.of(test, EI, depth, PullFit.Kind.GROWING).orElseThrow();
            double found = fit.soil().match(growing -> growing.rate().poundsPerCubicInch(), constant -> 0.0);
            assertThat(found).isCloseTo(nh, within(EXACT * nh * (depth.isZero() ? 100 : 1)));
            assertThat(fit.depth().inches()).isCloseTo(depthIn, within(EXACT * depthIn * 10));
        }
    }

    @ParameterizedTest
    @CsvSource({"230, 24, 75, 54", "465, 36, 50, 54", "930, 30, 100, 60"})
    void clayIsReadBack(double kd, double depthIn, double pullLb, double atIn) {
        SoilStiffness soil = new SoilStiffness.Constant(Stress.psi(kd));
        PullTest test = readings(soil, depthIn, pullLb, atIn);
        PullFit known = PullFit.of(test, EI, Length.inches(depthIn), PullFit.Kind.CONSTANT)
                .orElseThrow();
        double found = known.soil()
                .match(growing -> 0.0, constant -> constant.perLength().psi());
        assertThat(found).isCloseTo(kd, within(EXACT * kd));
        PullFit open = PullFit.of(test, EI, Length.ZERO, PullFit.Kind.CONSTANT).orElseThrow();
        assertThat(open.depth().inches()).isCloseTo(depthIn, within(1e-7 * depthIn));
    }

    @Test
    void aGateTurnsItLessThanThePull() {
        SoilStiffness soil = new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(24.3));
        PullFit fit = PullFit.of(readings(soil, 36, 75, 54), EI, Length.inches(36), PullFit.Kind.GROWING)
                .orElseThrow();
        assertThat(fit.momentOverPull(Length.inches(54))).isCloseTo(0.69, within(0.005));
        PierSpring pier = soil.spring(new HoleSize(Length.inches(10), Length.inches(36)));
        double pulled =
                pier.under(Force.pounds(75), Moment.poundInches(75 * 54)).turn().radians();
        double turned =
                pier.under(Force.ZERO, Moment.poundInches(75 * 54)).turn().radians();
        assertThat(fit.momentOverPull(Length.inches(54))).isCloseTo(turned / pulled, within(1e-9));
    }

    @Test
    void moreThanATenthLeftOverIsALoosePlug() {
        PullTest loose = new PullTest(
                Force.pounds(75),
                Length.inches(54),
                Length.inches(3),
                Length.inches(0.1),
                Length.inches(66),
                Length.inches(0.6),
                Length.inches(0.07));
        assertThat(PullFit.of(loose, EI, Length.inches(30), PullFit.Kind.GROWING)
                        .orElseThrow()
                        .isLoose())
                .isTrue();
    }
}
