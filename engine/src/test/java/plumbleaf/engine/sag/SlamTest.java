package plumbleaf.engine.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.footing.PierSpring;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Speed;

class SlamTest {
    @Test
    void onRigidGroundThePostIsACantilever() {
        double stiffness = Slam.strikeStiffness(HungGates.ROUND_POST, new PierSpring(1e9, 0, 1e13), Length.inches(40));
        double cantilever = 3 * 29e6 * HungGates.ROUND_POST.ixIn4() / (40 * 40 * 40);
        assertThat(stiffness).isCloseTo(cantilever, within(1e-3 * cantilever));
    }

    @Test
    void theGroundOnlySoftensIt() {
        double stiff =
                Slam.strikeStiffness(HungGates.ROUND_POST, HungGates.sand(36).stiff(), Length.inches(40));
        double soft =
                Slam.strikeStiffness(HungGates.ROUND_POST, HungGates.sand(36).soft(), Length.inches(40));
        assertThat(soft).isLessThan(stiff);
    }

    /** Half the speed, half the force; the energy of the leaf is that of the spring. */
    @Test
    void energyOfTheLeafIsEnergyOfThePost() {
        Leaf leaf = HungGates.leaf(46, 66, 1, 0, 2, SwingWay.IN);
        double k = 300;
        double force = Slam.peak(Speed.mph(3), leaf, k).pounds();
        double turning = 3 * 17.6 / leaf.latchAt().r().inches();
        double kinetic = leaf.weight().inertiaLbInS2() * turning * turning / 2;
        assertThat(force * force / (2 * k)).isCloseTo(kinetic, within(1e-9 * kinetic));
        assertThat(Slam.peak(Speed.mph(1.5), leaf, k).pounds()).isCloseTo(force / 2, within(1e-9));
    }

    /** 48 in. x 78 degrees / 5 s = 13.07 in./s, by hand. */
    @Test
    void aCloserBringsTheEdgeHomeSlowly() {
        assertThat(Slam.checked(Length.inches(48)).mph() * 17.6).isCloseTo(13.07, within(0.005));
    }

    /** q = 0.00256 x 402 x Cn 1.2 = 4.92 psf on 42 x 72 in. at 21 in. over a radian; I = 150/386.09 x 422/3: 15.3 ft/s at the edge. */
    @Test
    void aGustDrivesALeafFarFasterThanAHand() {
        double inertia = 150 / 386.0886 * 42 * 42 / 3;
        double edge = Slam.edgeInGust(0.00256 * 1600 * 1.2, 42 * 72, 21, 1, inertia, 42)
                .mph();
        assertThat(edge * 5280 / 3600).isCloseTo(15.3, within(0.1));
    }
}
