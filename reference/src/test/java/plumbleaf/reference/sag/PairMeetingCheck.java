package plumbleaf.reference.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.HingeForce;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.engine.sag.MeetingForces;
import plumbleaf.engine.sag.PairForces;
import plumbleaf.engine.sag.PairHold;
import plumbleaf.engine.sag.ShutAt;
import plumbleaf.engine.sag.WindWay;
import plumbleaf.engine.wind.LeafWind;

/**
 * A pair in even wind with a rod at the foot of each meeting stile: each leaf stands on three supports, so its rod and both its hinges follow from statics
 * alone, whatever bends: R = F rc / rm, and of the hinges {@code A1 + A2 = F - R}, {@code A1 z1 + A2 z2 = F zc - R z0}. With one rod for both, the leaf that
 * has it takes the other's F rc / rm at the latch.
 * Source: statics of a plate on three supports.
 * Tolerance: 0.1 lb, the give of what the frame holds as rigid.
 */
class PairMeetingCheck {
    private static final double PSF = 16.2;
    private static final double WIND_AT_IN = 42;
    private static final SoilStiffness SAND = new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(24.3));

    private static HungGate leaf() {
        return new TestGate(82, 66, 1, 95, "F1083-REG-2.5", 36, SAND, 60_000)
                .hung()
                .shut(ShutAt.FOOT);
    }

    private static HungLoads loads() {
        LeafWind wind = new LeafWind(Pressure.psf(PSF), Length.inches(WIND_AT_IN), Length.ZERO, "even");
        return new HungLoads(Force.ZERO, wind, wind, wind, List.of(), List.of());
    }

    private static CaseForces windAlone(List<CaseForces> cases, Combination combination) {
        return cases.stream()
                .filter(each -> each.state() == LeafState.CLOSED
                        && each.combination() == combination
                        && each.wind() == (combination == Combination.D ? WindWay.NONE : WindWay.OUT))
                .findFirst()
                .orElseThrow();
    }

    private static double across(List<HingeForce> hinges, int at) {
        return hinges.get(at).across().pounds();
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void statics(int rods) {
        HungGate gate = leaf();
        PairForces pair = new PairForces(gate, loads(), leaf(), loads());
        PairHold hold = new PairHold(Side.LEFT, SwingWay.IN, rods, 1e6, false, false, false);
        List<MeetingForces> meeting = pair.meeting(hold);
        double width = gate.leaf().width().inches();
        double height = gate.leaf().outline().corners().get(3).z().inches()
                - gate.leaf().outline().corners().get(0).z().inches();
        double force = 0.6 * PSF * width * height / 144;
        double rc = gate.leaf().outline().hingeEdge().inches() + width / 2;
        double rm = gate.leaf().members().get(1).from().r().inches();
        double held = force * rc / rm;
        // What the weight, off the middle of the frame, does beside the wind is taken off.
        CaseForces windy = windAlone(pair.leafB(meeting), Combination.D_W);
        CaseForces still = windAlone(pair.leafB(meeting), Combination.D);
        double rod = windy.hold().pounds() - still.hold().pounds();
        assertThat(rod).isCloseTo(rods == 2 ? -held : -2 * held, within(0.1));
        double z1 = gate.leaf().pins().get(0).z().inches();
        double z2 = gate.leaf().pins().get(1).z().inches();
        double z0 = gate.leaf().members().get(1).from().z().inches();
        double latch = rods == 2 ? 0 : held;
        double zl = gate.leaf().latchAt().z().inches();
        // Outward on the leaf: wind F, rod, the other leaf at the latch; on the post the hinges push the other way.
        double sum = force + rod + latch;
        double moment = force * WIND_AT_IN + rod * z0 + latch * zl;
        double a2 = (moment - sum * z1) / (z2 - z1);
        double a1 = sum - a2;
        assertThat(across(windy.hinges(), 0) - across(still.hinges(), 0)).isCloseTo(a1, within(0.2));
        assertThat(across(windy.hinges(), 1) - across(still.hinges(), 1)).isCloseTo(a2, within(0.2));
    }
}
