package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.action.Combination;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.sag.LeafState;
import plumbleaf.jobfile.result.ResultFile;

/** Ice reaches every case of the gate, its drop and its post; without it nothing changes. */
class IcedLeafTest {
    private static final String SAID = "\"person\": \"200 lb\"";

    private static Design iced(String thickness) {
        return Yard.nursery()
                .with(SAID, SAID + ", \"ice\": \"" + thickness + "\"")
                .design();
    }

    @Test
    void iceWeighsOnLeafHingesAndPost() {
        Design plain = Yard.nursery().design();
        Design iced = iced("1/2\\\"");
        HungLeaf leaf = Yard.gate(iced).hung().get(0);
        assertThat(Yard.gate(plain).hung().get(0).cases()).noneMatch(each -> each.combination() == Combination.D_L_ICE);
        assertThat(leaf.cases().stream()
                        .filter(each -> each.combination() == Combination.D_L_ICE)
                        .count())
                .isEqualTo(3);
        assertThat(iced.post(leaf.post()).orElseThrow().actions())
                .anyMatch(each -> each.combination() == Combination.D_L_ICE);
        double thick = leaf.sag().ice().orElseThrow().drop().inches();
        double thin = Yard.gate(iced("1/4\\\""))
                .hung()
                .get(0)
                .sag()
                .ice()
                .orElseThrow()
                .drop()
                .inches();
        assertThat(thick).isGreaterThan(2 * thin).isLessThan(3 * thin);
        assertThat(leaf.sag().total())
                .isEqualTo(Yard.gate(plain).hung().get(0).sag().total());
        assertThat(Yard.findings(iced, "sag.ice")).hasSize(1);
        assertThat(Yard.findings(plain, "sag.ice")).isEmpty();
        assertThat(ResultFile.write(iced)).contains("\"ice\"", "D+L+0.7Di").doesNotContain("NaN", "Infinity");
    }

    /** A gust on the frozen leaf, closed and open, from both sides; it strains the hinges more than the ice alone and less than a gust of the design wind would. */
    @Test
    void windBlowsOnTheIcedLeaf() {
        HungLeaf leaf = Yard.gate(iced("1/2\\\"")).hung().get(0);
        assertThat(leaf.cases().stream()
                        .filter(each -> each.combination() == Combination.D_ICE_W)
                        .count())
                .isEqualTo(6);
        double windy = across(leaf, Combination.D_ICE_W);
        assertThat(windy).isPositive().isLessThan(across(leaf, Combination.D_W));
    }

    private static double across(HungLeaf leaf, Combination combination) {
        return leaf.cases().stream()
                .filter(each -> each.combination() == combination && each.state() == LeafState.CLOSED)
                .mapToDouble(each -> Math.abs(each.hinges().get(1).across().pounds()))
                .max()
                .orElseThrow();
    }
}
