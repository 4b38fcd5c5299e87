package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Nailer;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.gate.RailLoad;
import plumbleaf.engine.takeoff.TakeoffLine;

/** A leaf that carries on a fence of lying boards. */
class LyingLeafTest {
    private static final Yard YARD = Yard.nursery()
            .with("\"style\": \"wood-side-by-side\"", "\"style\": \"wood-horizontal\"")
            .with("\"fit\": \"racked\"", "\"fit\": \"stepped\"");
    private static final Design LYING = YARD.design();

    private static Leaf leaf(Design design) {
        return Yard.gate(design).plan().leaves().get(0);
    }

    @Test
    void boardsLieAcrossTheLeafOnUprightNailers() {
        Leaf leaf = leaf(LYING);
        assertThat(leaf.pickets()).isNotEmpty().allSatisfy(board -> {
            assertThat(board.lying()).isTrue();
            assertThat(board.width()).isEqualTo(leaf.width());
        });
        assertThat(leaf.nailers()).hasSizeGreaterThanOrEqualTo(3).allMatch(Nailer::upright);
        assertThat(leaf.pickets().get(0).across().inches()).isCloseTo(5.5, within(1e-9));
    }

    /** What lies on the rails is what the boards and nailers weigh. */
    @Test
    void allTheirWeightComesToTheRails() {
        Leaf leaf = leaf(LYING);
        double wood = 0;
        for (Picket board : leaf.pickets()) wood += board.wet().pounds();
        for (Nailer nailer : leaf.nailers()) wood += nailer.wet().pounds();
        double onRails = 0;
        for (RailLoad load : leaf.railLoads()) onRails += load.wet().pounds();
        assertThat(onRails).isCloseTo(wood, within(1e-9 * wood));
    }

    @Test
    void boardsAndNailersAreCutAndPaidFor() {
        List<String> items =
                LYING.quote().takeoff().lines().stream().map(TakeoffLine::item).toList();
        assertThat(items).contains("board-5/4x6/western_redcedar", "rail-2x4/western_redcedar", "picket-screw-2.5");
        assertThat(LYING.findings()).noneMatch(finding -> finding.message().contains("has no price"));
        assertThat(Yard.findings(LYING, "leaf.climbable").get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(Yard.findings(LYING, "leaf.nailer")).hasSize(1);
    }

    @Test
    void onARakedLeafTheyFollowItsBottomWithPlumbEnds() {
        Leaf leaf = leaf(LYING);
        double slope = leaf.outline().bottom().ratio();
        assertThat(Math.abs(slope)).isGreaterThan(0.01);
        double cosine = 1 / Math.sqrt(1 + slope * slope);
        Picket board = leaf.pickets().get(0);
        assertThat(board.along().inches())
                .isCloseTo(leaf.width().inches() / cosine + 5.5 * Math.abs(slope), within(1e-9));
        assertThat(board.length().inches() * cosine).isCloseTo(5.5, within(1e-9));
    }
}
