package plumbleaf.engine.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Pressure;
import plumbleaf.engine.wind.LeafWind;

/** Forces by statics alone, where statics is enough. */
class GateForcesTest {
    private static final double PERSON_LB = 200;
    private static final double WIND_PSF = 14;
    private static final Leaf LEAF = HungGates.clad(HungGates.leaf(46, 66, 1, 0, 2, SwingWay.IN), 90, 0.9);
    private static final double AXIS_IN = 0.375 + 2.875 / 2;

    private static HungLoads loads() {
        LeafWind shut = new LeafWind(Pressure.psf(WIND_PSF), Length.inches(36), Length.ZERO, "shut");
        LeafWind open = new LeafWind(Pressure.psf(WIND_PSF), Length.inches(36), Length.inches(9), "alone");
        return new HungLoads(Force.pounds(PERSON_LB), shut, open, shut, List.of(), List.of());
    }

    private static CaseForces find(List<CaseForces> all, Combination combination, LeafState state, WindWay wind) {
        return all.stream()
                .filter(each -> each.combination() == combination && each.state() == state && each.wind() == wind)
                .findFirst()
                .orElseThrow();
    }

    private static CaseForces dead(HungGate gate, LeafState state) {
        return find(GateForces.of(gate, loads()), Combination.D, state, WindWay.NONE);
    }

    @Test
    void theWeightHangsAsACoupleOnTwoHinges() {
        CaseForces dead = dead(HungGates.gate(LEAF, HungGates.ROUND_POST), LeafState.CLOSED);
        double[] weight = HungGates.weightAndMoment(LEAF);
        double pull = weight[1] / LEAF.pinSpacing().inches();
        assertThat(dead.hinges().get(1).horizontal().pounds()).isCloseTo(pull, within(1e-6));
        assertThat(dead.hinges().get(0).horizontal().pounds()).isCloseTo(-pull, within(1e-6));
        assertThat(dead.hinges().get(0).down().pounds()).isCloseTo(weight[0], within(1e-6));
        assertThat(dead.hinges().get(1).down().pounds()).isCloseTo(0, within(1e-6));
        assertThat(dead.hingePost().momentAlong().poundInches())
                .isCloseTo(weight[1] + weight[0] * AXIS_IN, within(1e-4));
        assertThat(dead.hingePost().down().pounds()).isCloseTo(weight[0], within(1e-6));
        assertThat(dead.hingePost().push().pounds()).isCloseTo(0, within(1e-6));
        assertThat(dead.hold().pounds()).isCloseTo(0, within(1e-4));
    }

    @Test
    void woodOutsideTheFrameTipsThePostOutward() {
        CaseForces dead = dead(HungGates.gate(LEAF, HungGates.ROUND_POST), LeafState.CLOSED);
        assertThat(dead.hingePost().momentAcross().poundInches()).isCloseTo(90 * 0.9, within(1e-4));
        double couple = 90 * 0.9 / LEAF.pinSpacing().inches();
        assertThat(dead.hinges().get(1).across().pounds()).isCloseTo(couple, within(1e-6));
    }

    @Test
    void aPersonAddsTheirWeightTimesTheWidth() {
        CaseForces live = find(
                GateForces.of(HungGates.gate(LEAF, HungGates.ROUND_POST), loads()),
                Combination.D_L,
                LeafState.CLOSED,
                WindWay.NONE);
        double[] weight = HungGates.weightAndMoment(LEAF);
        double edge = LEAF.outline().latchEdge().inches();
        assertThat(live.hinges().get(1).horizontal().pounds())
                .isCloseTo((weight[1] + PERSON_LB * edge) / LEAF.pinSpacing().inches(), within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"IN", "OUT"})
    void theOpenLeafTipsThePostToItsOwnSide(String way) {
        SwingWay swing = SwingWay.valueOf(way);
        Leaf leaf = HungGates.clad(HungGates.leaf(46, 66, 1, 0, 2, swing), 90, 0);
        CaseForces dead = dead(HungGates.gate(leaf, HungGates.ROUND_POST), LeafState.OPEN);
        double[] weight = HungGates.weightAndMoment(leaf);
        double side = swing == SwingWay.OUT ? 1 : -1;
        assertThat(dead.hingePost().momentAlong().poundInches()).isCloseTo(weight[0] * AXIS_IN, within(1e-4));
        assertThat(dead.hingePost().momentAcross().poundInches()).isCloseTo(side * weight[1], within(1e-4));
        assertThat(dead.hingePost().torsion().poundInches()).isCloseTo(0, within(1e-4));
    }

    @Test
    void aSquarePostIsWorstAtFortyFiveDegreesARoundOneClosed() {
        Leaf leaf = HungGates.clad(HungGates.leaf(46, 66, 1, 0, 2, SwingWay.OUT), 90, 0);
        CaseForces square = dead(HungGates.gate(leaf, HungGates.SQUARE_POST), LeafState.WORST);
        assertThat(square.angle().inDegrees()).isCloseTo(45, within(0.02));
        CaseForces round = dead(HungGates.gate(leaf, HungGates.ROUND_POST), LeafState.WORST);
        assertThat(round.angle().inDegrees()).isZero();
    }

    @Test
    void theShutLeafStandsOnHingesAndLatchWhereTheyAre() {
        List<CaseForces> all = GateForces.of(HungGates.gate(LEAF, HungGates.ROUND_POST), loads());
        CaseForces out = find(all, Combination.D_W, LeafState.CLOSED, WindWay.OUT);
        CaseForces in = find(all, Combination.D_W, LeafState.CLOSED, WindWay.IN);
        double width = LEAF.outline().width().inches();
        double force = 0.6 * WIND_PSF / 144 * width * 66;
        double centre = LEAF.outline().hingeEdge().inches() + width / 2;
        double latchStile = LEAF.outline().latchEdge().inches() - 1;
        double hold = -force * centre / latchStile;
        assertThat(out.hold().pounds()).isCloseTo(hold, within(1e-3));
        double top = out.hinges().get(1).across().pounds()
                - in.hinges().get(1).across().pounds();
        double low = out.hinges().get(0).across().pounds()
                - in.hinges().get(0).across().pounds();
        assertThat((top + low) / 2).isCloseTo(force + hold, within(1e-3));
        double zTop = LEAF.pins().get(1).z().inches();
        double zLow = LEAF.pins().get(0).z().inches();
        assertThat((top * zTop + low * zLow) / 2).isCloseTo(force * 36 + hold * 40, within(1e-2));
        assertThat(out.latchPost().momentAcross().poundInches()).isCloseTo(-hold * 40, within(1e-2));
        assertThat(in.latchPost().momentAcross().poundInches()).isCloseTo(hold * 40, within(1e-2));
    }

    @Test
    void aFreeLeafCarriesNoSteadyWind() {
        List<CaseForces> all = GateForces.of(HungGates.gate(LEAF, HungGates.ROUND_POST), loads());
        CaseForces open = find(all, Combination.D_W, LeafState.OPEN, WindWay.OUT);
        assertThat(open.hingePost().torsion().poundInches()).isCloseTo(0, within(1e-3));
        assertThat(open.hinges())
                .isEqualTo(
                        find(all, Combination.D, LeafState.OPEN, WindWay.NONE).hinges());
    }

    @Test
    void aLockingHingePutsTheWholeCoupleIntoThePost() {
        HungGate gate =
                HungGates.heldBy(HungGates.gate(LEAF, HungGates.ROUND_POST), new HoldOpen.HingeLock(Length.inches(2)));
        CaseForces open = find(GateForces.of(gate, loads()), Combination.D_W, LeafState.OPEN, WindWay.OUT);
        double width = LEAF.outline().width().inches();
        double force = 0.6 * WIND_PSF / 144 * width * 66;
        double centre = LEAF.outline().hingeEdge().inches() + width / 2 + 9;
        assertThat(Math.abs(open.hingePost().torsion().poundInches())).isCloseTo(force * centre, within(0.01 * force));
    }

    @Test
    void aStopTakesItsShareAndTheHingesTheRest() {
        HungGate gate =
                HungGates.heldBy(HungGates.gate(LEAF, HungGates.ROUND_POST), new HoldOpen.Stop(Length.inches(30)));
        CaseForces open = find(GateForces.of(gate, loads()), Combination.D_W, LeafState.OPEN, WindWay.OUT);
        double width = LEAF.outline().width().inches();
        double force = 0.6 * WIND_PSF / 144 * width * 66;
        double centre = LEAF.outline().hingeEdge().inches() + width / 2 + 9;
        assertThat(open.hold().pounds()).isCloseTo(-force * centre / 30, within(0.01 * force));
        double hinges = open.hinges().get(0).across().pounds()
                + open.hinges().get(1).across().pounds();
        assertThat(hinges).isCloseTo(force - force * centre / 30, within(0.01 * force));
        // Open at right angles the hinges' push runs along the fence, through the post's axis: no arm, no torsion.
        assertThat(Math.abs(open.hingePost().torsion().poundInches())).isLessThan(1e-3);
    }

    @Test
    void theFenceBesidePushesBothPosts() {
        PostPush beside = new PostPush(Length.inches(38), Force.pounds(100));
        HungLoads more = new HungLoads(
                Force.pounds(PERSON_LB),
                loads().shut(),
                loads().open(),
                loads().serviceGust(),
                List.of(beside),
                List.of(beside));
        HungGate gate = HungGates.gate(LEAF, HungGates.ROUND_POST);
        CaseForces with = find(GateForces.of(gate, more), Combination.D_W, LeafState.CLOSED, WindWay.IN);
        CaseForces without = find(GateForces.of(gate, loads()), Combination.D_W, LeafState.CLOSED, WindWay.IN);
        assertThat(with.hingePost()
                        .momentAcross()
                        .minus(without.hingePost().momentAcross())
                        .poundInches())
                .isCloseTo(-60 * 38, within(0.01));
        assertThat(with.latchPost()
                        .momentAcross()
                        .minus(without.latchPost().momentAcross())
                        .poundInches())
                .isCloseTo(-60 * 38, within(0.01));
    }

    @Test
    void theOtherSwingIsTheMirrorImage() {
        Leaf in = HungGates.clad(HungGates.leaf(46, 66, 1, 0.06, 2, SwingWay.IN), 90, 0);
        Leaf out = HungGates.clad(HungGates.leaf(46, 66, 1, 0.06, 2, SwingWay.OUT), 90, 0);
        HungGate gateIn = HungGates.heldBy(HungGates.gate(in, HungGates.SQUARE_POST), new HoldOpen.CaneBolt());
        HungGate gateOut = HungGates.heldBy(HungGates.gate(out, HungGates.SQUARE_POST), new HoldOpen.CaneBolt());
        CaseForces a = find(GateForces.of(gateIn, loads()), Combination.D_W, LeafState.OPEN, WindWay.IN);
        CaseForces b = find(GateForces.of(gateOut, loads()), Combination.D_W, LeafState.OPEN, WindWay.OUT);
        assertThat(b.hingePost().momentAlong().poundInches())
                .isCloseTo(a.hingePost().momentAlong().poundInches(), within(1e-4));
        assertThat(b.hingePost().momentAcross().poundInches())
                .isCloseTo(-a.hingePost().momentAcross().poundInches(), within(1e-4));
        assertThat(b.hingePost().torsion().poundInches())
                .isCloseTo(a.hingePost().torsion().poundInches(), within(1e-4));
    }

    @Test
    void threeHingesThatGiveLoadTheOuterTwo() {
        Leaf leaf = HungGates.clad(HungGates.leaf(70, 66, 1, 0, 3, SwingWay.IN), 160, 0);
        HungGate soft =
                HungGates.on(HungGates.gate(leaf, HungGates.stiffer(HungGates.ROUND_POST, 1e4)), HungGates.hinge(500));
        CaseForces dead = dead(soft.in(HungGates.rigidGround()), LeafState.CLOSED);
        double[] weight = HungGates.weightAndMoment(leaf);
        double pull = weight[1] / leaf.pinSpacing().inches();
        assertThat(dead.hinges().get(2).horizontal().pounds()).isCloseTo(pull, within(0.02 * pull));
        assertThat(Math.abs(dead.hinges().get(1).horizontal().pounds())).isLessThan(0.05 * pull);
        HungGate rigid = HungGates.on(HungGates.gate(leaf, HungGates.ROUND_POST), HungGates.hinge(1e8));
        double couple = 0;
        for (HingeForce hinge : dead(rigid, LeafState.CLOSED).hinges())
            couple += hinge.horizontal().pounds() * hinge.z().inches();
        assertThat(couple).isCloseTo(weight[1], within(1e-3));
    }

    @Test
    void everyCaseIsThere() {
        List<CaseForces> all = GateForces.of(HungGates.gate(LEAF, HungGates.ROUND_POST), loads());
        assertThat(all).hasSize(3 * 8);
        assertThat(all.get(0).members()).hasSameSizeAs(LEAF.members());
        assertThat(all.get(0).members().get(0).inPlane().poundInches()).isPositive();
    }
}
