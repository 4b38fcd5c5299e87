package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.geometry.Direction;
import plumbleaf.engine.job.AsSet;
import plumbleaf.engine.job.Gate;
import plumbleaf.engine.job.GateGround;
import plumbleaf.engine.job.GateKind;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.LeafShape;
import plumbleaf.engine.job.Meeting;
import plumbleaf.engine.job.Obstacle;
import plumbleaf.engine.job.Release;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SlideSpec;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.quantity.Offset;

/** A gate on ground that falls 10 % from left to right, seen from outside. */
class GatesTest {
    private static final Opening OPENING = GateSamples.opening(Direction.EAST, Side.RIGHT);
    private static final GroundUnder FALLING = GateSamples.plane(Direction.EAST, -0.10, 0);
    private static final GateParts PARTS = GateSamples.parts(GateSamples.wood(), Joint.MITERED, 1);

    private static GateAsk ask(GateKind kind, double bottomGapIn, GroundUnder ground) {
        Gate gate = GateSamples.gate(kind, GateSamples.leaf(new LeafShape.Raked(), bottomGapIn), List.of());
        return GateSamples.ask(gate, OPENING, PARTS, ground);
    }

    private static GateKind swing(Side hinge, SwingWay way) {
        return GateSamples.swing(new Hand(hinge, way), 90);
    }

    private static Finding finding(GatePlan plan, String id) {
        return plan.findings().stream()
                .filter(finding -> finding.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No " + id + " among " + plan.findings()));
    }

    @Test
    void hungOnTheHighSideItStrikesAndTheSentenceSaysWhere() {
        GatePlan plan = Gates.plan(ask(swing(Side.LEFT, SwingWay.IN), 3, FALLING));
        Finding strikes = finding(plan, "swing.strikes");
        assertThat(strikes.severity()).isEqualTo(Severity.MUST_FIX);
        Swing swing = plan.swings().get(0);
        // c = 3 - 4.7 (1 - cos q): zero at cos q = 1.7 / 4.7, 1.7 short at 90 degrees.
        assertThat(swing.maxAngle().radians()).isCloseTo(Math.acos(1.7 / 4.7), within(1e-9));
        assertThat(swing.least().clear().inches()).isCloseTo(-1.7, within(1e-9));
        assertThat(strikes.message())
                .startsWith("G1 strikes the ground 69 degrees open, ")
                .contains(" short at the latch corner, 90 degrees open");
        assertThat(strikes.measure().orElseThrow().ratio().orElseThrow()).isGreaterThan(1);
    }

    @Test
    void everyRemedyClearsWhenItIsMadeAndItsEditNamesTheGate() {
        GateAsk asked = ask(swing(Side.LEFT, SwingWay.IN), 3, FALLING);
        List<Remedy> remedies = finding(Gates.plan(asked), "swing.strikes").remedies();
        assertThat(remedies)
                .extracting(Remedy::id)
                .contains("hinge-side", "raise-leaf", "hold-back", "grade-arc", "pair");
        assertThat(remedies).allSatisfy(remedy -> {
            assertThat(remedy.ratio().orElseThrow()).isLessThanOrEqualTo(1 + 1e-9);
            assertThat(remedy.edit().orElse("gates[G1].x=y")).matches("gates\\[G1\\]\\.[a-zA-Z.]+=.+");
        });
        Gate gate = asked.gate();
        GateAsk otherHinge = ask(swing(Side.RIGHT, SwingWay.IN), 3, FALLING);
        assertThat(Gates.plan(otherHinge).swings().get(0).clearsGround()).isTrue();
        Remedy shorter = remedy(remedies, "bottom-rail");
        Remedy raise = remedy(remedies, "raise-leaf");
        assertThat(shorter.ratio()).isEqualTo(raise.ratio());
        // 1.7 short in the leaf's plane, a little more at its faces, and twice the shot error of 1/4 in. above that;
        // raised by eighths.
        double shortBy =
                0.5 - Gates.plan(asked).swings().get(0).running().clear().inches();
        double up = Math.ceil(shortBy * 8) / 8;
        GateAsk raised = ask(swing(Side.LEFT, SwingWay.IN), 3 + up, FALLING);
        assertThat(Gates.plan(raised).swings().get(0).running().clear().inches())
                .isBetween(0.5, 0.5 + 0.125);
        assertThat(raise.edit()).contains("gates[G1].leaf.bottomGap=" + LengthText.exact(3 + up));
        assertThat(shorter.edit())
                .contains("gates[G1].leaf.bottomGap=" + LengthText.exact(3 + up) + "; gates[G1].leaf.infill="
                        + LengthText.exact(71 - up));
        assertThat(raise.words()).contains("more than the 4\" allowed");
        Remedy holdBack = remedy(remedies, "hold-back");
        String degrees = holdBack.edit().orElseThrow().replaceAll(".*=(\\d+) deg", "$1");
        GateKind held = GateSamples.swing(new Hand(Side.LEFT, SwingWay.IN), Integer.parseInt(degrees));
        assertThat(Gates.plan(ask(held, 3, FALLING)).swings().get(0).clearsGround())
                .isTrue();
        assertThat(gate.id()).isEqualTo("G1");
    }

    /** Soil to shave under a leaf that is short by s at 90 degrees, by numbers: the same double sum done coarsely here. */
    @Test
    void theVolumeToShaveIsTheIntegralOfTheShortage() {
        GateAsk asked = ask(swing(Side.LEFT, SwingWay.IN), 3, FALLING);
        Remedy grade = remedy(finding(Gates.plan(asked), "swing.strikes").remedies(), "grade-arc");
        double sum = 0;
        int n = 1000;
        for (int i = 0; i < n; i++) {
            double r = 0.375 + (47 - 0.375) * (i + 0.5) / n;
            for (int j = 0; j < n; j++) {
                double q = Math.PI / 2 * (j + 0.5) / n;
                double shortBy = 0.5 - (3 - 0.1 * r * (1 - Math.cos(q)));
                if (shortBy > 0) sum += shortBy * r * (46.625 / n) * (Math.PI / 2 / n);
            }
        }
        double said = Double.parseDouble(grade.words().replaceAll(".*, ([0-9.]+) cu ft.*", "$1"));
        assertThat(said).isCloseTo(sum / 1728, within(0.006)).isPositive();
    }

    @Test
    void groundThatIsShavedNoLongerStopsTheLeaf() {
        GateAsk asked = ask(swing(Side.LEFT, SwingWay.IN), 3, FALLING);
        Gate shaved = asked.gate().withGround(GateGround.AS_IT_IS.withRegrade(true));
        GatePlan plan = Gates.plan(GateSamples.ask(shaved, asked.opening(), asked.parts(), asked.ground()));
        assertThat(plan.findings()).noneMatch(finding -> finding.id().equals("swing.strikes"));
        Finding said = finding(plan, "gate.regrade");
        assertThat(said.severity()).isEqualTo(Severity.CAUTION);
        Regrade cut = plan.regrades().get(0);
        assertThat(cut.deepest().inches()).isGreaterThanOrEqualTo(0.5);
        assertThat(said.message()).contains(DecimalText.upTo(cut.soil().cubicFeet(), 2) + " cu ft of soil");
        assertThat(Gates.plan(asked).regrades()).isEmpty();
    }

    /**
     * Ground that falls s = 0.10 from the pin along the closed leaf: {@code V = s (b^3 - a^3) / 3} under a quarter turn, and slopes of 1 in 2 with the section h^2, {@code s^2 b^3 pi / 4} along
     * the arc and {@code s^2 (b^3 - a^3) / 3} along the closed leaf; all of it fill. Source: integration by hand.
     */
    @Test
    void aLandingOnFallingGroundIsFilledAndTheLeafClears() {
        GateAsk asked = ask(swing(Side.LEFT, SwingWay.IN), 3, FALLING);
        Remedy offered = remedy(finding(Gates.plan(asked), "swing.strikes").remedies(), "landing");
        assertThat(offered.edit()).contains("gates[G1].landing=true");
        Gate gate = asked.gate().withGround(GateGround.AS_IT_IS.withLanding(true));
        GatePlan plan = Gates.plan(GateSamples.ask(gate, asked.opening(), asked.parts(), asked.ground()));
        Swing swing = plan.swings().get(0);
        assertThat(swing.running().clear().inches()).isCloseTo(3, within(1e-9));
        Outline outline = plan.leaves().get(0).outline();
        assertThat(outline.bottom().isZero()).isTrue();
        double a = outline.hingeEdge().inches();
        double b = outline.latchEdge().inches();
        double cubes = (b * b * b - a * a * a) / 3;
        double fill = 0.1 * cubes + 0.01 * b * b * b * Math.PI / 4 + 0.01 * cubes;
        Regrade landing = plan.regrades().get(0);
        assertThat(landing.fill().cubicFeet() * 1728).isCloseTo(fill, within(0.01 * fill));
        assertThat(landing.soil().cubicFeet()).isZero();
        assertThat(landing.highest().inches()).isCloseTo(0.1 * b, within(0.001 * b));
        assertThat(finding(plan, "gate.landing").message()).contains("cu ft of fill");
        assertThat(offered.words()).contains(DecimalText.upTo(landing.fill().cubicFeet(), 2) + " cu ft of fill");
    }

    /** Mirrored ground and hand: the same soil. Rising ground: the same, cut. */
    @Test
    void aLandingIsTheSameMirroredAndTurnedOver() {
        GroundUnder rising = GateSamples.plane(Direction.EAST, 0.10, 0);
        Regrade falls = landing(Side.LEFT, FALLING);
        assertThat(landing(Side.RIGHT, rising).fill().cubicFeet())
                .isCloseTo(falls.fill().cubicFeet(), within(1e-9));
        assertThat(landing(Side.LEFT, rising).soil().cubicFeet())
                .isCloseTo(falls.fill().cubicFeet(), within(1e-9));
    }

    private static Regrade landing(Side hinge, GroundUnder ground) {
        GateAsk asked = ask(swing(hinge, SwingWay.IN), 3, ground);
        Gate gate = asked.gate().withGround(GateGround.AS_IT_IS.withLanding(true));
        return Gates.plan(GateSamples.ask(gate, asked.opening(), asked.parts(), ground))
                .regrades()
                .get(0);
    }

    /**
     * A bank that begins 30 in. inside the line and rises 20 %: a leaf 47 in. long that swings in over it with 3 in. under it strikes at {@code 0.2 (47 - 30) = 3.4 in.}, with half an inch
     * to spare from {@code 47 - back <= 30 + (3 - 0.5) / 0.2 = 42.5} on, 4.5 in. back and a little more for its thickness: the least set-back that is made, 12 in., clears.
     */
    @Test
    void aGateIsSetBackFromABank() {
        GroundUnder bank = new BankGround(30, 0.2);
        GateAsk asked = ask(swing(Side.LEFT, SwingWay.IN), 3, bank);
        Finding strikes = finding(Gates.plan(asked), "swing.strikes");
        Remedy back = remedy(strikes.remedies(), "set-back");
        assertThat(back.edit()).contains("gates[G1].swing=in; gates[G1].setBack=1'");
        assertThat(back.words()).contains("outwards");
        Gate gate = asked.gate().withGround(GateGround.AS_IT_IS.withSetBack(Length.inches(12)));
        Offset left = gate.leftOfLine(OPENING.outside());
        assertThat(left.inches()).isEqualTo(-12);
        GatePlan plan = Gates.plan(GateSamples.ask(gate, OPENING.besideLine(left), PARTS, bank));
        assertThat(plan.swings().get(0).clearsGround()).isTrue();
        assertThat(finding(plan, "gate.set-back").message()).contains("to the right of the string");
    }

    @Test
    void aPairHalvesTheReachSoItHalvesTheLoss() {
        GateKind pair = new GateKind.Pair(
                0.5, Side.RIGHT, Stated.of(SwingWay.IN), Angle.degrees(90), new HoldOpen.CaneBolt(), Meeting.usual());
        GatePlan plan = Gates.plan(ask(pair, 3, FALLING));
        assertThat(plan.leaves()).extracting(Leaf::id).containsExactly("G1a", "G1b");
        // Each 48 - 1.5 - 0.625 = 45.875 over two: r = 0.375 + 22.9375.
        double tip = 0.375 + 45.875 / 2;
        assertThat(plan.swings().get(0).least().clear().inches()).isCloseTo(3 - 0.1 * tip, within(1e-9));
        assertThat(finding(plan, "gate.meeting").severity()).isEqualTo(Severity.PASS);
        assertThat(plan.leaves().get(0).outline().top().ratio()).isCloseTo(-0.1, within(1e-9));
        assertThat(plan.leaves().get(1).outline().top().ratio()).isCloseTo(0.1, within(1e-9));
    }

    @Test
    void judgingLeavesOnlyTheCuresAndThePictureOut() {
        GateAsk asked = ask(swing(Side.LEFT, SwingWay.IN), 3, FALLING);
        GatePlan judged = Gates.judged(asked);
        GatePlan planned = Gates.plan(asked);
        Swing tried = judged.swing().orElseThrow();
        Swing drawn = planned.swing().orElseThrow();
        assertThat(tried.running()).isEqualTo(drawn.running());
        assertThat(tried.leastOfFaces()).isEqualTo(drawn.leastOfFaces());
        assertThat(tried.maxAngle()).isEqualTo(drawn.maxAngle());
        assertThat(tried.curve()).isEmpty();
        assertThat(drawn.curve()).isNotEmpty();
        assertThat(judged.leaves()).isEqualTo(planned.leaves());
        assertThat(finding(judged, "swing.strikes").message())
                .isEqualTo(finding(planned, "swing.strikes").message());
        assertThat(finding(judged, "swing.strikes").remedies()).isEmpty();
    }

    @Test
    void aLeafThatCannotBeMadeIsSaidNotThrown() {
        GateAsk asked = ask(swing(Side.LEFT, SwingWay.IN), 3, FALLING);
        GateAsk narrow = GateSamples.ask(asked.gate(), OPENING.measured(Length.inches(6)), PARTS, FALLING);
        GatePlan plan = Gates.plan(narrow);
        assertThat(plan.leaves()).isEmpty();
        assertThat(finding(plan, "gate.size").message())
                .isEqualTo("G1 cannot be made: the gaps leave 4-5/8\" for the leaf, and its two stiles need 6\"."
                        + " Change the opening, the gaps or the height.");
    }

    /** A post 2 ft out and 2 ft in stops the leaf hung on the left and swinging in; swinging out it is behind the leaf. */
    @Test
    void whatStandsAboutStaysWhereItStandsWhenTheHandChanges() {
        Gate gate = GateSamples.gate(
                swing(Side.LEFT, SwingWay.IN),
                GateSamples.leaf(new LeafShape.Raked(), 3),
                List.of(new Obstacle("spigot", Offset.feet(2), Length.feet(2))));
        GroundUnder level = GateSamples.plane(Direction.EAST, 0, 0);
        GatePlan plan = Gates.plan(GateSamples.ask(gate, OPENING, PARTS, level));
        Finding strikes = finding(plan, "swing.obstacle");
        assertThat(strikes.message()).startsWith("G1 strikes the spigot ");
        assertThat(strikes.remedies())
                .extracting(Remedy::id)
                .contains("swing-side")
                .doesNotContain("hinge-side", "raise-leaf");
        // Hung on the right it still swings over the same spot.
        Swing right = plan.everyHand().stream()
                .filter(swing -> swing.hand().equals(new Hand(Side.RIGHT, SwingWay.IN)))
                .findFirst()
                .orElseThrow();
        assertThat(right.limitedBy().key()).isEqualTo("spigot");
    }

    @Test
    void anUnsaidHandWorksOutAllFourShowsTheWorstAndRefusesRelease() {
        GateKind open = new GateKind.Swing(Stated.open(), Stated.open(), Angle.degrees(90), new HoldOpen.CaneBolt());
        GatePlan plan = Gates.plan(ask(open, 3, FALLING));
        assertThat(plan.swings()).hasSize(4);
        assertThat(plan.everyHand()).hasSize(4);
        assertThat(plan.swings())
                .isSortedAccordingTo(
                        (a, b) -> a.running().clear().compareTo(b.running().clear()));
        assertThat(plan.leaves().get(0).hand().hinge()).isEqualTo(Side.LEFT);
        assertThat(finding(plan, "gate.hand").severity()).isEqualTo(Severity.CANNOT_SAY);
    }

    @Test
    void whatIsNotWorkedOutIsSaidNotPassed() {
        GatePlan slide = Gates.plan(ask(new GateKind.Slide(Side.LEFT, SlideSpec.usual(Length.feet(4))), 3, FALLING));
        assertThat(slide.leaves()).isEmpty();
        assertThat(finding(slide, "gate.size").message()).contains("no set of rollers takes a frame");
        GatePlan flagged = Gates.plan(ask(new GateKind.Flagged("vertical lift"), 3, FALLING));
        assertThat(finding(flagged, "gate.kind").message()).contains("vertical lift");
    }

    @Test
    void onceThePostsStandTheSmallestReadingRules() {
        GateAsk planned = ask(swing(Side.RIGHT, SwingWay.IN), 3, FALLING);
        Gate gate = planned.gate();
        Gate set = new Gate(
                gate.id(),
                gate.kind(),
                gate.run(),
                gate.station(),
                gate.opening(),
                gate.leaf(),
                gate.hingePost(),
                gate.latchPost(),
                gate.hinges(),
                gate.latch(),
                gate.loads(),
                List.of(new AsSet(
                        LocalDate.of(2027, 5, 3),
                        Length.inches(48.125),
                        Length.inches(48),
                        Length.inches(47.75),
                        Offset.ZERO,
                        Offset.ZERO,
                        Offset.ZERO,
                        Offset.ZERO)),
                new Release.Released("A", LocalDate.of(2027, 5, 4), "shop", false),
                List.of());
        GatePlan plan = Gates.plan(GateSamples.ask(set, OPENING, PARTS, FALLING));
        assertThat(plan.leaves().get(0).width().inches()).isCloseTo(47.75 - 0.75 - 0.625, within(1e-9));
        assertThat(finding(plan, "gate.release").severity()).isEqualTo(Severity.PASS);
        assertThat(finding(Gates.plan(planned), "gate.release").message()).startsWith("HOLD: G1 is priced");
    }

    @Test
    void aClearanceBelowTwiceTheShotErrorAsksForOneMoreShot() {
        // Hinged low it gains at the tip; at the pins it keeps the closed gap of 3/8 in.
        GatePlan plan = Gates.plan(ask(swing(Side.RIGHT, SwingWay.IN), 0.375, GateSamples.plane(Direction.EAST, 0, 0)));
        Finding low = finding(plan, "swing.low");
        assertThat(low.severity()).isEqualTo(Severity.CAUTION);
        assertThat(low.message()).contains("Take one more shot there: station ");
    }

    @Test
    void aHeavyLeafNeedsTwoPeopleAndZincIsNamed() {
        GatePlan plan = Gates.plan(ask(swing(Side.RIGHT, SwingWay.IN), 3, FALLING));
        assertThat(finding(plan, "gate.lift").severity()).isEqualTo(Severity.CAUTION);
        assertThat(finding(plan, "gate.zinc").message()).contains("zinc fume");
    }

    @Test
    void aLatchGapOutsideTheLatchsRangeMustBeFixed() {
        assertThat(finding(Gates.plan(ask(swing(Side.RIGHT, SwingWay.IN), 3, FALLING)), "gate.latch-gap")
                        .severity())
                .isEqualTo(Severity.PASS);
        assertThat(finding(Gates.plan(ask(swing(Side.RIGHT, SwingWay.IN), 3, FALLING)), "gate.nose")
                        .severity())
                .isEqualTo(Severity.PASS);
    }

    private static Remedy remedy(List<Remedy> remedies, String id) {
        return remedies.stream()
                .filter(remedy -> remedy.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("No " + id + " among " + remedies));
    }
}
