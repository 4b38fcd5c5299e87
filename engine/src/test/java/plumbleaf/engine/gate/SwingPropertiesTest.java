package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.job.FinishedFace;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.LeafShape;
import plumbleaf.engine.job.LeafSpec;
import plumbleaf.engine.job.Obstacle;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Offset;

/** What every swing must do, whatever the ground. */
class SwingPropertiesTest {
    private static final GateParts PARTS = GateSamples.parts(GateSamples.wood(), Joint.MITERED, 1);

    private static GatePlan plan(GroundUnder ground, Opening opening, Hand hand, LeafShape shape, double bottomGapIn) {
        LeafSpec leaf = GateSamples.leaf(shape, bottomGapIn);
        return Gates.plan(GateSamples.ask(
                GateSamples.gate(GateSamples.swing(hand, 100), leaf, List.of()), opening, PARTS, ground));
    }

    /** The run turned end for end with its outside on the other hand is the same gate: nothing may change. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void whichWayTheRunIsWalkedDoesNotMatter(long seed) {
        GroundUnder ground = new TriangleField(seed, 700, 42, 2, 0.05, 0.03);
        Opening walkedEast = GateSamples.opening(Direction.EAST, Side.RIGHT);
        Opening walkedWest = new Opening(
                walkedEast.face().moved(Direction.EAST, walkedEast.clear()),
                Direction.EAST.reversed(),
                Side.LEFT,
                Length.feet(24),
                walkedEast.clear(),
                Length.feet(20),
                Length.feet(20));
        for (Hand hand : Hand.all()) {
            Swing one = plan(ground, walkedEast, hand, new LeafShape.Raked(), 4)
                    .swings()
                    .get(0);
            Swing other = plan(ground, walkedWest, hand, new LeafShape.Raked(), 4)
                    .swings()
                    .get(0);
            same(one, other);
        }
    }

    /** Ground and gate mirrored across a line square to the run: left becomes right, every number stays. */
    @ParameterizedTest
    @ValueSource(doubles = {-0.15, -0.07, 0, 0.04, 0.12})
    void aMirroredGateGivesMirroredResults(double grade) {
        Direction along = Direction.bearing(Angle.degrees(37));
        Opening opening = GateSamples.opening(along, Side.RIGHT);
        GroundUnder ground = GateSamples.plane(along, grade, 0.05);
        GroundUnder mirrored = GateSamples.plane(along, -grade, 0.05);
        for (Hand hand : Hand.all()) {
            GatePlan one = plan(ground, opening, hand, new LeafShape.Raked(), 5);
            GatePlan other = plan(mirrored, opening, hand.otherHinge(), new LeafShape.Raked(), 5);
            same(one.swings().get(0), other.swings().get(0));
            assertThat(one.grade().ratio()).isCloseTo(other.grade().ratio(), within(1e-9));
            Leaf a = one.leaves().get(0);
            Leaf b = other.leaves().get(0);
            assertThat(a.weight().wet().pounds()).isCloseTo(b.weight().wet().pounds(), within(1e-9));
            for (int i = 0; i < a.members().size(); i++) {
                Member here = a.members().get(i);
                Member there = b.members().get(i);
                assertThat(here.longPoint().inches())
                        .isCloseTo(there.longPoint().inches(), within(1e-9));
                assertThat(here.firstEnd().fromSquare().radians())
                        .isCloseTo(there.firstEnd().fromSquare().radians(), within(1e-9));
            }
        }
    }

    /** Mirrored across the fence line: in becomes out, and the pickets go with the viewer. */
    @Test
    void swungToTheOtherSideOfMirroredGroundNothingChanges() {
        Direction along = Direction.EAST;
        GateParts inside = GateSamples.parts(
                new Cladding.Wood(GateSamples.sideBySide(), GateSamples.cedar(), GateSamples.cedar(), FinishedFace.IN),
                Joint.MITERED,
                1);
        Hand in = new Hand(Side.LEFT, SwingWay.IN);
        LeafSpec leaf = GateSamples.leaf(new LeafShape.Raked(), 6);
        Opening opening = GateSamples.opening(along, Side.RIGHT);
        Swing one = Gates.plan(GateSamples.ask(
                        GateSamples.gate(GateSamples.swing(in, 90), leaf, List.of()),
                        opening,
                        PARTS,
                        GateSamples.plane(along, -0.06, 0.09)))
                .swings()
                .get(0);
        Swing other = Gates.plan(GateSamples.ask(
                        GateSamples.gate(GateSamples.swing(in.otherSwing(), 90), leaf, List.of()),
                        opening,
                        inside,
                        GateSamples.plane(along, -0.06, -0.09)))
                .swings()
                .get(0);
        assertThat(other.least().clear().inches()).isCloseTo(one.least().clear().inches(), within(1e-9));
        assertThat(other.running().clear().inches())
                .isCloseTo(one.running().clear().inches(), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14, 15})
    void raisingTheLeafRaisesEveryClearanceByAsMuch(long seed) {
        Random random = new Random(seed);
        GroundUnder ground = new TriangleField(seed, 700, 42, 2, 0.06 * random.nextDouble(), 0.06);
        Opening opening = GateSamples.opening(Direction.EAST, Side.RIGHT);
        double up = 3 * random.nextDouble();
        Hand hand = Hand.all().get(random.nextInt(4));
        Swing low =
                plan(ground, opening, hand, new LeafShape.Raked(), 3).swings().get(0);
        Swing high = plan(ground, opening, hand, new LeafShape.Raked(), 3 + up)
                .swings()
                .get(0);
        assertThat(high.least().clear().inches() - low.least().clear().inches()).isCloseTo(up, within(1e-9));
        assertThat(high.leastOfFaces().clear().inches()
                        - low.leastOfFaces().clear().inches())
                .isCloseTo(up, within(1e-9));
        assertThat(high.maxAngle()).isGreaterThanOrEqualTo(low.maxAngle());
    }

    /** 4 ft, 71, 3, 3/4 and 5/8 in. written in millimeters are the same lengths and give the same numbers to the last digit. */
    @Test
    void metricAndUsGiveTheSameNumbers() {
        GroundUnder ground = GateSamples.plane(Direction.EAST, -0.08, 0.02);
        Opening us = GateSamples.opening(Direction.EAST, Side.RIGHT);
        Opening metric = new Opening(
                us.face(), us.along(), us.outside(), mm("5486.4 mm"), mm("1219.2 mm"), us.roomBefore(), us.roomAfter());
        LeafSpec usLeaf = GateSamples.leaf(new LeafShape.Raked(), 3);
        LeafSpec metricLeaf = new LeafSpec(
                new LeafShape.Raked(), mm("1803.4 mm"), mm("76.2 mm"), mm("19.05 mm"), mm("15.875 mm"), Length.ZERO, 1);
        Hand hand = new Hand(Side.RIGHT, SwingWay.IN);
        GatePlan one = Gates.plan(
                GateSamples.ask(GateSamples.gate(GateSamples.swing(hand, 90), usLeaf, List.of()), us, PARTS, ground));
        GatePlan other = Gates.plan(GateSamples.ask(
                GateSamples.gate(GateSamples.swing(hand, 90), metricLeaf, List.of()), metric, PARTS, ground));
        assertThat(other).isEqualTo(one);
    }

    /** Drop grows towards the latch corner, the ground rises everywhere: on a plane both come off where it is tightest. */
    @Test
    void runningClearanceIsLessByDropAndLaterGround() {
        GateAsk ask = GateSamples.ask(
                GateSamples.gate(
                        GateSamples.swing(new Hand(Side.RIGHT, SwingWay.IN), 90),
                        GateSamples.leaf(new LeafShape.Raked(), 3),
                        List.of()),
                GateSamples.opening(Direction.EAST, Side.RIGHT),
                GateSamples.parts(new Cladding.Open(), Joint.MITERED, 1),
                GateSamples.plane(Direction.EAST, 0.04, 0));
        GateAsk dropped = new GateAsk(
                ask.gate(),
                ask.opening(),
                ask.parts(),
                ask.ground(),
                ask.gap(),
                Length.inches(0.25),
                ask.hingesToTry(),
                ask.display());
        Swing before = Gates.plan(ask).swings().get(0);
        Swing after = Gates.plan(dropped).swings().get(0);
        assertThat(after.least()).isEqualTo(before.least());
        assertThat(before.running().clear().inches() - after.running().clear().inches())
                .isCloseTo(0.25, within(1e-9));
    }

    /** A stop 30 in. out at 45 degrees meets the face that leads: 45 degrees less asin(e / R). */
    @ParameterizedTest
    @EnumSource(SwingWay.class)
    void aThingInTheSwingLimitsTheAngle(SwingWay way) {
        double out = 30 / Math.sqrt(2);
        Hand hand = new Hand(Side.LEFT, way);
        GateAsk ask = GateSamples.ask(
                GateSamples.gate(
                        GateSamples.swing(hand, 90),
                        GateSamples.leaf(new LeafShape.Raked(), 3),
                        List.of(new Obstacle("downspout", Offset.inches(out), Length.inches(out)))),
                GateSamples.opening(Direction.EAST, Side.RIGHT),
                PARTS,
                GateSamples.plane(Direction.EAST, 0, 0));
        GatePlan plan = Gates.plan(ask);
        double face = way == SwingWay.OUT ? 1 + 1.5 + 0.625 : 1;
        assertThat(plan.swings().get(0).maxAngle().radians())
                .isCloseTo(Math.PI / 4 - Math.asin(face / 30), within(1e-9));
        assertThat(plan.findings())
                .anySatisfy(finding -> assertThat(finding.id()).isEqualTo("swing.obstacle"));
    }

    private static Length mm(String text) {
        return LengthText.length(text).value().orElseThrow();
    }

    private static void same(Swing one, Swing other) {
        assertThat(other.least().clear().inches()).isCloseTo(one.least().clear().inches(), within(1e-9));
        assertThat(other.leastOfFaces().clear().inches())
                .isCloseTo(one.leastOfFaces().clear().inches(), within(1e-9));
        assertThat(other.maxAngle().radians()).isCloseTo(one.maxAngle().radians(), within(1e-7));
        assertThat(other.closedLargest().clear().inches())
                .isCloseTo(one.closedLargest().clear().inches(), within(1e-9));
    }
}
