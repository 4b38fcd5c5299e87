package plumbleaf.reference.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plumbleaf.engine.catalogue.HingeModel;
import plumbleaf.engine.footing.HoleSize;
import plumbleaf.engine.footing.SoilBand;
import plumbleaf.engine.footing.SoilStiffness;
import plumbleaf.engine.gate.Cladding;
import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.Hand;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafMaker;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Outline;
import plumbleaf.engine.gate.RailLoad;
import plumbleaf.engine.job.Bracing;
import plumbleaf.engine.job.Bracket;
import plumbleaf.engine.job.HingeSpec;
import plumbleaf.engine.job.HoldOpen;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.RodRuns;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Angle;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Moment;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.quantity.SoilRate;
import plumbleaf.engine.sag.ByCause;
import plumbleaf.engine.sag.GateSag;
import plumbleaf.engine.sag.HungGate;
import plumbleaf.engine.sag.HungLoads;
import plumbleaf.engine.sag.LifeJudgement;
import plumbleaf.engine.sag.PierSprings;
import plumbleaf.engine.sag.Sags;
import plumbleaf.engine.sag.ShutAt;
import plumbleaf.engine.section.Section;

/**
 * Thirty random leaves, every kind of bracing by every kind of joint in square, rectangular and round tube: the leaf's own drop, the rods that hang loose, the frame's weight and the long
 * point of every stile and rail; and the drop by stiffness against the drop by virtual work.
 *
 * Source: a plane frame solved by a second program; recipe in reference/recipes/leaf_kinds.py (numpy), run once, recorded in leaf-kinds.csv.
 * Tolerance: 1e-5 in. of the drop, which is what the stiffness gives that stands for a rigid pin (0.04 % of the least drop here); 1e-7 of weights and lengths; 1e-9 between
 * stiffness and virtual work.
 */
class LeafKindsCheck {
    private static final double RIGID_PIN_IN = 1e-5;
    private static final double SIZE = 1e-7;
    private static final double TWO_ROADS = 1e-9;
    private static final double FROM_ENDS_IN = 6;

    static List<List<String>> leaves() throws IOException {
        try (InputStream in = LeafKindsCheck.class.getResourceAsStream("leaf-kinds.csv")) {
            String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
            List<List<String>> rows = new ArrayList<>();
            for (String line : text.strip().split("\n", -1))
                if (!line.startsWith("#") && !line.startsWith("leaf,")) rows.add(List.of(line.split(",", -1)));
            return rows;
        }
    }

    @ParameterizedTest
    @MethodSource("leaves")
    void dropsAndWeighsAsBySecondProgram(List<String> row) {
        Leaf leaf = leaf(row);
        GateSag sag = Sags.of(hung(leaf), HungLoads.person(Force.pounds(200)), LifeJudgement.USUAL);
        ByCause cause = sag.byCause();
        double own = cause.leaf().inches() + cause.hingeFlex().inches();
        assertThat(own).as("drop").isCloseTo(number(row, 16), within(RIGID_PIN_IN));
        assertThat(sag.total().inches())
                .as("by stiffness and by virtual work")
                .isCloseTo(
                        cause.total().inches(), within(TWO_ROADS * cause.total().inches()));
        List<String> slack = new ArrayList<>();
        for (int i = 0; i < sag.sway().rods().size(); i++)
            if (sag.sway().rods().get(i).slack()) slack.add(Integer.toString(i + 1));
        assertThat(String.join(" ", slack)).as("slack rods").isEqualTo(row.get(17));
        double weight = 0;
        for (Member member : leaf.members()) weight += member.weight().pounds();
        assertThat(weight).as("frame").isCloseTo(number(row, 18), within(SIZE * number(row, 18)));
        String[] longPoints = row.get(19).split(" ", -1);
        for (int i = 0; i < longPoints.length; i++) {
            double expected = Double.parseDouble(longPoints[i]);
            assertThat(leaf.members().get(i).longPoint().inches())
                    .as("long point of " + leaf.members().get(i).id())
                    .isCloseTo(expected, within(SIZE * expected));
        }
    }

    private static Leaf leaf(List<String> row) {
        Section tube = TestGate.section(row.get(1));
        if (row.get(2).equals("1")) tube = tube.turned();
        Outline outline = new Outline(
                Offset.inches(TestGate.PIN_OFFSET_IN),
                Offset.inches(TestGate.PIN_OFFSET_IN + number(row, 8)),
                Offset.inches(number(row, 10)),
                Offset.inches(number(row, 10) + number(row, 9)),
                Slope.ratio(number(row, 11)),
                Slope.ratio(number(row, 12)),
                Length.ZERO);
        Section post = TestGate.section("F1083-REG-4");
        GateParts parts = new GateParts(
                tube,
                bracing(row),
                joint(row.get(3)),
                bracket(number(row, 7)),
                post,
                post,
                hinge(),
                TestGate.CATALOGUE.latches().get(0),
                new Cladding.Open(),
                List.of());
        List<Length> midRailsAt = new ArrayList<>();
        for (String at : row.get(14).split(" ", -1))
            if (!at.isEmpty()) midRailsAt.add(Length.inches(Double.parseDouble(at)));
        Leaf bare = LeafMaker.make(
                "G1a",
                new Hand(Side.LEFT, SwingWay.IN),
                outline,
                parts,
                Integer.parseInt(row.get(13)),
                midRailsAt,
                new HingeSpec("hinge", Length.inches(FROM_ENDS_IN), Length.inches(FROM_ENDS_IN), 2, 0),
                Offset.inches(40));
        List<RailLoad> loads = new ArrayList<>();
        Force share = Force.pounds(number(row, 15) / bare.rails().size());
        for (Member rail : bare.rails())
            loads.add(new RailLoad(
                    rail.id(), bare.outline().hingeEdge(), bare.outline().latchEdge(), Offset.ZERO, share, share));
        assertThat(bare.of(MemberRole.ROD))
                .hasSize(row.get(4).equals("rod-both") ? 2 : row.get(4).startsWith("rod") ? 1 : 0);
        return bare.with(bare.members(), loads, List.of());
    }

    private static Bracing bracing(List<String> row) {
        RodRuns runs = switch (row.get(4)) {
            case "rod-low" -> RodRuns.FROM_LOW_HINGE;
            case "rod-both" -> RodRuns.BOTH;
            default -> RodRuns.FROM_TOP_HINGE;
        };
        return switch (row.get(4)) {
            case "none" -> Bracing.tubes(0);
            case "one" -> Bracing.tubes(1);
            case "two" -> Bracing.tubes(2);
            case "x" -> new Bracing.Cross();
            default -> new Bracing.Rod(Length.inches(number(row, 5)), Force.pounds(number(row, 6)), runs);
        };
    }

    private static Joint joint(String key) {
        for (Joint joint : Joint.values()) if (joint.key().equals(key)) return joint;
        throw new IllegalArgumentException(key);
    }

    private static Bracket bracket(double lbInPerRad) {
        return new Bracket(
                Stated.of(Angle.ZERO), Stated.of(Moment.poundInches(lbInPerRad * Math.PI / 180)), Stated.open());
    }

    private static HungGate hung(Leaf leaf) {
        Section post = TestGate.section("F1083-REG-4");
        SoilStiffness soil = new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(24.3));
        SoilBand band = new SoilBand(soil.times(0.5), soil, soil.times(2));
        return new HungGate(
                leaf,
                hinge(),
                post,
                post.depth().times(0.5),
                Length.inches(90),
                Offset.ZERO,
                PierSprings.of(band, new HoleSize(Length.inches(12), Length.inches(42)), Length.ZERO),
                Angle.degrees(90),
                new HoldOpen.Free(),
                ShutAt.LATCH);
    }

    private static HingeModel hinge() {
        return new TestGate(
                        60,
                        60,
                        0,
                        0,
                        "F1083-REG-4",
                        36,
                        new SoilStiffness.Growing(SoilRate.poundsPerCubicInch(24.3)),
                        60_000)
                .hinge();
    }

    private static double number(List<String> row, int at) {
        return Double.parseDouble(row.get(at));
    }
}
