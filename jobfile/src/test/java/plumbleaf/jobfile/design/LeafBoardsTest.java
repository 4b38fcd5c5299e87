package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Severity;

/** Boards of a leaf in wind, by hand: a simple span from rail to rail, NDS 2018 3.3 with Supplement Table 4A factors. */
@Tag("slow")
class LeafBoardsTest {
    private static final String MID_RAILS = "\"midRails\": 1";

    private static Checked boards(Design design) {
        return (Checked) Yard.findings(design, "leaf.boards").get(0);
    }

    private static double ratio(Design design) {
        return boards(design).measure().orElseThrow().ratio().getAsDouble();
    }

    /** {@code M = 0.6 p s L2 / 8}, s from board to board, on {@code S = b t2 / 6}; cedar No. 2 Fb 700, CF 1.3 for 5-1/2 in., Cfu 1.15, dry factor 1 since Fb CF is under 1150, CD 1.6. */
    @Test
    void aBoardBendsAsASimpleSpanDoes() {
        Design design = Yard.nursery().design();
        HungLeaf leaf = Yard.gate(design).hung().get(0);
        double psf = leaf.workings().stream()
                .flatMap(working -> working.lines().stream())
                .filter(line -> line.symbol().equals("p") || line.symbol().equals("po"))
                .mapToDouble(line -> line.value())
                .max()
                .orElseThrow();
        double spanIn = leaf.gate().leaf().rails().get(1).middle().z().inches()
                - leaf.gate().leaf().rails().get(0).middle().z().inches();
        double thickIn = 0.625;
        double pitchIn = leaf.gate().leaf().pickets().get(2).r().inches()
                - leaf.gate().leaf().pickets().get(1).r().inches();
        double stress = 0.6 * psf / 144 * pitchIn * spanIn * spanIn / 8 / (5.5 * thickIn * thickIn / 6);
        assertThat(ratio(design)).isCloseTo(stress / (700 * 1.3 * 1.15 * 1.6), within(1e-6));
        assertThat(boards(design).severity()).isEqualTo(Severity.PASS);
    }

    @Test
    void withoutAMidRailTheyCarryFourTimesAsMuchAndARailMoreIsOffered() {
        Design rail = Yard.nursery()
                .with("\"speed\": \"105 mph\", \"exposure\": \"B\"", "\"speed\": \"140 mph\", \"exposure\": \"C\"")
                .design();
        Design none = Yard.nursery()
                .with("\"speed\": \"105 mph\", \"exposure\": \"B\"", "\"speed\": \"140 mph\", \"exposure\": \"C\"")
                .with(MID_RAILS, "\"midRails\": 0")
                .design();
        assertThat(ratio(none)).isCloseTo(4 * ratio(rail), within(0.02 * ratio(none)));
        assertThat(ratio(none)).isGreaterThan(1);
        assertThat(boards(none).severity()).isEqualTo(Severity.CAUTION);
        assertThat(boards(none).remedies()).hasSize(1);
        assertThat(boards(none).remedies().get(0).edit()).contains("gates[G1].leaf.midRails=1");
    }
}
