package plumbleaf.engine.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.wind.LeafWind;

/** The leaves of a pair in wind, held where they meet. */
class PairForcesTest {
    private static final double PSF = 16;
    private static final double STIFF = 2e4;

    private static HungGate leaf(double widthIn) {
        HungGate gate = HungGates.heldBy(
                HungGates.gate(HungGates.leaf(widthIn, 66, 1, 0, 2, SwingWay.IN), HungGates.ROUND_POST),
                new HoldOpen.Free());
        return gate.shut(ShutAt.FOOT);
    }

    private static HungLoads wind(double personLb) {
        LeafWind blows = new LeafWind(Pressure.psf(PSF), Length.inches(36), Length.ZERO, "even");
        LeafWind gust = new LeafWind(Pressure.psf(3), Length.inches(36), Length.ZERO, "gust");
        return new HungLoads(Force.pounds(personLb), blows, blows, gust, List.of(), List.of());
    }

    private static PairHold hold(int rods, boolean strip, boolean stop, boolean keeper) {
        return new PairHold(Side.LEFT, SwingWay.IN, rods, STIFF, strip, stop, keeper);
    }

    private record Found(List<CaseForces> a, List<CaseForces> b, List<MeetingForces> meeting) {}

    private static Found found(double a, double b, PairHold hold) {
        PairForces pair = new PairForces(leaf(a), wind(0), leaf(b), wind(0));
        List<MeetingForces> meeting = pair.meeting(hold);
        return new Found(pair.leafA(meeting), pair.leafB(meeting), meeting);
    }

    private static double windLb(double widthIn) {
        return PSF * widthIn * 66 / 144 * Combination.D_W.wind();
    }

    private static MeetingForces in(Found found, WindWay way) {
        return found.meeting().stream()
                .filter(each -> each.combination() == Combination.D_W && each.wind() == way)
                .findFirst()
                .orElseThrow();
    }

    private static CaseForces closed(List<CaseForces> cases, WindWay way) {
        return cases.stream()
                .filter(each ->
                        each.state() == LeafState.CLOSED && each.combination() == Combination.D_W && each.wind() == way)
                .findFirst()
                .orElseThrow();
    }

    private static double across(CaseForces each) {
        return each.hinges().stream()
                .mapToDouble(hinge -> hinge.across().pounds())
                .sum();
    }

    /** By moments about the pins: the rod of a leaf of width b whose middle lies at r takes F r / b'. */
    @Test
    void withARodOnEachLeafEachTakesHalfOfItsWindAndTheLatchNothing() {
        Found found = found(82, 82, hold(2, false, false, false));
        MeetingForces at = in(found, WindWay.OUT);
        double r = 0.375 + 41;
        double meets = 0.375 + 82 - 1;
        assertThat(at.latch().pounds()).isCloseTo(0, within(1e-4));
        assertThat(at.rodA().pounds()).isCloseTo(-windLb(82) * r / meets, within(0.01));
        assertThat(at.rodB().pounds()).isCloseTo(at.rodA().pounds(), within(1e-4));
    }

    /** One rod holds both leaves: the first leaf leans on the other at the latch, or at the strip where the wind presses it there. */
    @Test
    void oneRodTakesWhatBothLeavesPutThere() {
        double both = 2 * windLb(82) * (0.375 + 41) / (0.375 + 81);
        for (boolean strip : List.of(false, true))
            for (WindWay way : List.of(WindWay.IN, WindWay.OUT)) {
                Found found = found(82, 82, hold(1, strip, false, false));
                MeetingForces at = in(found, way);
                assertThat(at.rodA().pounds()).isZero();
                assertThat(Math.abs(at.rodB().pounds())).isCloseTo(both, within(0.05));
                double between = at.latch().pounds()
                        + at.stripFoot().pounds()
                        + at.stripTop().pounds();
                assertThat(Math.abs(between)).isCloseTo(both / 2, within(0.05));
                double strips = at.stripFoot().pounds() + at.stripTop().pounds();
                if (!strip) assertThat(strips).isZero();
                else if (way == WindWay.OUT) assertThat(strips).isLessThan(-1);
            }
    }

    /** Whatever is there to hold them, all that acts across the pair adds up to nothing. */
    @Test
    void everyPairStandsStill() {
        for (PairHold hold : List.of(
                hold(1, false, false, false),
                hold(1, true, false, false),
                hold(2, true, true, false),
                hold(1, true, true, false),
                hold(2, true, false, true)))
            for (WindWay way : List.of(WindWay.IN, WindWay.OUT)) {
                Found found = found(60, 90, hold);
                MeetingForces at = in(found, way);
                double keepers = at.keeperA().pounds() + at.keeperB().pounds();
                double wind = (windLb(60) + windLb(90)) * way.outward();
                double hinges = across(closed(found.a(), way)) + across(closed(found.b(), way));
                // Hinge forces are those on the post.
                assertThat(-hinges + at.ground().pounds() + keepers + wind).isCloseTo(0, within(0.05));
                double held = at.rodA().pounds()
                        + at.stopA().pounds()
                        + at.stripFoot().pounds();
                assertThat(closed(found.a(), way).hold().pounds()).isCloseTo(held, within(0.05));
            }
    }

    @Test
    void whatBarsTheWayOnlyPushes() {
        Found found = found(60, 90, hold(1, true, true, false));
        for (MeetingForces at : found.meeting()) {
            assertThat(at.stopA().pounds()).isLessThanOrEqualTo(1e-6);
            assertThat(at.stopB().pounds()).isLessThanOrEqualTo(1e-6);
            assertThat(at.stripTop().pounds()).isLessThanOrEqualTo(1e-6);
            assertThat(at.footA().inches()).isLessThanOrEqualTo(1e-6);
        }
    }

    @Test
    void aKeeperOverheadStopsTheTops() {
        MeetingForces free = in(found(82, 82, hold(2, false, false, false)), WindWay.OUT);
        MeetingForces kept = in(found(82, 82, hold(2, false, false, true)), WindWay.OUT);
        assertThat(free.top().inches()).isGreaterThan(0.5);
        assertThat(kept.top().inches()).isLessThan(1e-4);
        assertThat(kept.rod().pounds()).isLessThan(free.rod().pounds());
    }

    /** Left and right changed over, the same forces come out changed over. */
    @Test
    void thePairInTheMirrorIsThePair() {
        Found one = found(60, 90, hold(1, true, false, false));
        PairHold turned = new PairHold(Side.RIGHT, SwingWay.IN, 1, STIFF, true, false, false);
        Found other = found(90, 60, turned);
        for (WindWay way : List.of(WindWay.IN, WindWay.OUT)) {
            MeetingForces here = in(one, way);
            MeetingForces there = in(other, way);
            assertThat(there.rodA().pounds()).isCloseTo(here.rodB().pounds(), within(1e-6));
            assertThat(there.latch().pounds()).isCloseTo(-here.latch().pounds(), within(1e-6));
            assertThat(there.topA().inches()).isCloseTo(here.topB().inches(), within(1e-9));
        }
    }
}
