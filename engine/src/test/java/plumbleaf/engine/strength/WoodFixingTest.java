package plumbleaf.engine.strength;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.catalogue.BoltSize;
import plumbleaf.engine.material.Moisture;
import plumbleaf.engine.material.WoodGrade;
import plumbleaf.engine.material.WoodSpecies;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Stress;
import plumbleaf.engine.section.WoodPost;

/** Fixings in wood by numbers done by hand: G 0.55 bears 6,160 psi along the grain and 3,626 psi across it under 1/2 in. */
class WoodFixingTest {
    private static final BoltSize HALF = new BoltSize(
            Length.inches(0.5),
            13,
            Length.inches(0.4375),
            Length.inches(0.109),
            Length.inches(0.5625),
            Length.inches(1.062),
            Length.inches(1.375),
            Length.inches(0.371),
            Length.inches(0.3125));

    private static WoodPost post(double side) {
        WoodGrade grade = new WoodGrade(
                "No. 2",
                Stress.psi(850),
                Stress.psi(550),
                Stress.psi(165),
                Stress.psi(375),
                Stress.psi(525),
                Stress.psi(1_200_000),
                Stress.psi(440_000),
                false);
        WoodSpecies wood =
                new WoodSpecies("w", "w", 0.55, Moisture.percent(30), 7.4, 4.8, 0.00259, grade, "made up", "memory");
        Length size = Length.inches(side);
        return new WoodPost("W", "w", false, size, size, wood, grade, true, false, "made up", "memory");
    }

    private static WoodFixing bolt(double side, double apart, double toEnd) {
        return new WoodFixing(
                post(side),
                HALF.diameter(),
                HALF.diameter(),
                Length.inches(side),
                Length.inches(0.25),
                Length.inches(apart),
                Length.inches(toEnd));
    }

    /**
     * Mode IIIs along the grain: Re 6160/87000 = 0.070805, k3 = -1 + sqrt(2 (1.070805)/0.070805 + 2 x 45000 x 2.070805 x 0.25 / (3 x 6160 x 0.0625)) = 7.4097,
     * Z = 7.4097 x 0.5 x 0.25 x 6160 / (2.070805 x 3.2) = 861 lb; wet and lasting 0.7 x 0.9.
     */
    @Test
    void aBoltUnderThePlateYieldsInTwoPlaces() {
        WoodFixing bolt = bolt(5.5, 4, 8);
        double re = 6160.0 / 87_000;
        double k3 = -1 + Math.sqrt(2 * (1 + re) / re + 2 * 45_000.0 * (2 + re) * 0.25 / (3 * 6160 * 0.0625));
        double z = k3 * 0.5 * 0.25 * 6160 / ((2 + re) * 3.2);
        assertThat(bolt.mode(0)).isEqualTo("IIIs");
        assertThat(bolt.sideways(0, 0.9).pounds()).isCloseTo(z * 0.9 * 0.7, within(0.01));
    }

    @Test
    void acrossTheGrainItTakesLess() {
        WoodFixing bolt = bolt(5.5, 4, 8);
        double before = Double.MAX_VALUE;
        for (int deg = 0; deg <= 90; deg += 15) {
            double here = bolt.sideways(deg, 1).pounds();
            assertThat(here).isLessThanOrEqualTo(before);
            before = here;
        }
    }

    /** Full at four diameters, three quarters at three; nothing counts nearer. */
    @Test
    void whatStandsNearLosesInStep() {
        assertThat(bolt(5.5, 2, 8).geometry()).isEqualTo(1);
        assertThat(bolt(5.5, 1.5, 8).geometry()).isCloseTo(0.75, within(1e-12));
        assertThat(bolt(5.5, 1.5, 8).isTooNear()).isFalse();
        assertThat(bolt(5.5, 1.4, 8).isTooNear()).isTrue();
        assertThat(bolt(5.5, 2, 1).geometry()).isCloseTo(0.5, within(1e-12));
        assertThat(bolt(5.5, 2, 0.9).isTooNear()).isTrue();
    }

    /** 375 x 0.67 x (1.75/1.375) x pi/4 (1.375^2 - 0.5625^2) = 395.4 lb. */
    @Test
    void aWasherSinksIn() {
        double held = bolt(5.5, 4, 8).washer(HALF.woodWasherOver(), HALF.hole()).pounds();
        assertThat(held).isCloseTo(395.4, within(0.1));
    }

    /** 4 in. long, 2-1/2 in. of thread less 5/16 in. of point: 1800 x 0.55^1.5 x 0.5^0.75 = 436.6 lb an inch, as the standard's own example prints it. */
    @Test
    void aLagHoldsByItsThread() {
        LagScrew lag = new LagScrew(HALF, Length.inches(4), Length.inches(0.25));
        assertThat(lag.thread().inches()).isEqualTo(2.1875);
        assertThat(lag.pulled(post(5.5), 1).pounds()).isCloseTo(436.56 * 2.1875 * 0.7, within(0.05));
        assertThat(lag.isDeepEnough()).isTrue();
        assertThat(new LagScrew(HALF, Length.inches(2), Length.inches(0.25)).isDeepEnough())
                .isFalse();
    }

    /** Pulled alone or pushed alone it takes what it takes; both at once lie between. */
    @Test
    void aPullAndAPushAddByHankinson() {
        Force out = Force.pounds(600);
        Force sideways = Force.pounds(300);
        assertThat(LagScrew.use(Force.ZERO, Force.pounds(300), sideways, out)).isCloseTo(0.5, within(1e-9));
        assertThat(LagScrew.use(Force.pounds(150), Force.ZERO, sideways, out)).isCloseTo(0.5, within(1e-9));
        double both = LagScrew.use(Force.pounds(100), Force.pounds(100), sideways, out);
        assertThat(both).isCloseTo(Math.sqrt(20_000) / (600 * 300 / (600 * 0.5 + 300 * 0.5)), within(1e-9));
    }
}
