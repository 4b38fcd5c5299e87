package plumbleaf.engine.footing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.quantity.Stress;

class PierSpringTest {
    private static final HoleSize HOLE = new HoleSize(Length.inches(12), Length.inches(36));
    private static final SoilStiffness SAND = new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(24.3));
    private static final SoilStiffness CLAY = new SoilStiffness.Constant(Stress.psi(465));

    /** Sums the push of many thin slices of soil on a pier that stands askew, with the top ignored. */
    private static double[] slices(boolean growing, double looseIn, double sidewaysIn, double turnRad) {
        int count = 20_000;
        double step = (36 - looseIn) / count;
        double push = 0;
        double moment = 0;
        for (int slice = 0; slice < count; slice++) {
            double below = (slice + 0.5) * step;
            double z = looseIn + below;
            double force = (growing ? 24.3 * below : 465) * (sidewaysIn - turnRad * z) * step;
            push += force;
            moment -= force * z;
        }
        return new double[] {push, moment};
    }

    @Test
    void theMatrixIsTheSumOfItsSlices() {
        for (SoilStiffness soil : new SoilStiffness[] {SAND, CLAY}) {
            for (double looseIn : new double[] {0, 6, 12}) {
                PierSpring spring = soil.spring(HOLE, Length.inches(looseIn));
                double y = 0.03;
                double t = 0.002;
                double[] sum = slices(soil == SAND, looseIn, y, t);
                assertThat(spring.lateralLbPerIn() * y + spring.couplingLb() * t)
                        .isCloseTo(sum[0], within(1e-3));
                assertThat(spring.couplingLb() * y + spring.rotationalLbIn() * t)
                        .isCloseTo(sum[1], within(0.05));
            }
        }
    }

    @Test
    void deeperTurnsLessAndLooserTopTurnsMore() {
        Moment moment = Moment.poundInches(4050);
        double shallow = SAND.spring(HOLE).under(Force.ZERO, moment).turn().radians();
        double deep = SAND.spring(HOLE.deeperBy(Length.inches(6)))
                .under(Force.ZERO, moment)
                .turn()
                .radians();
        double loose = SAND.spring(HOLE, Length.inches(6))
                .under(Force.ZERO, moment)
                .turn()
                .radians();
        assertThat(deep / shallow).isCloseTo(Math.pow(36.0 / 42, 4), within(1e-12));
        assertThat(loose).isGreaterThan(shallow);
    }

    /** A rotation spring alone, without the sideways give, would be nine times too stiff in soil that grows with depth, four times in clay. */
    @Test
    void theCouplingMatters() {
        Moment moment = Moment.poundInches(1000);
        double turn = SAND.spring(HOLE).under(Force.ZERO, moment).turn().radians();
        assertThat(turn * SAND.spring(HOLE).rotationalLbIn() / 1000).isCloseTo(9, within(1e-9));
        double clayTurn = CLAY.spring(HOLE).under(Force.ZERO, moment).turn().radians();
        assertThat(clayTurn * CLAY.spring(HOLE).rotationalLbIn() / 1000).isCloseTo(4, within(1e-9));
    }
}
