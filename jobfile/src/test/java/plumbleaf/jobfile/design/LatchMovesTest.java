package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.PairDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;

/** What a closed gate moves at its latch: up and down, away from it and across, with the play of everything that holds it there. */
class LatchMovesTest {
    private static final Yard NURSERY = Yard.nursery();

    private static Yard pair() {
        return NURSERY.with("\"kind\": \"swing\"", "\"kind\": \"pair\", \"swing\": \"in\"")
                .with(", \"hinge\": \"left\", \"swing\": \"in\", \"opens\": \"90 deg\"", "");
    }

    private static double measured(Design design, String id) {
        List<Finding> found = Yard.findings(design, id);
        assertThat(found).as(id).isNotEmpty();
        return found.get(0).measure().orElseThrow().measured();
    }

    /** Elastic drop in soft soil times the share of the weight that is water: what is lost of the load is lost of the drop. */
    @Test
    void aLeafOfWoodComesUpAsItDries() {
        HungLeaf hung = Yard.gate(NURSERY.design()).hung().get(0);
        double water = hung.gate().leaf().weight().wet().pounds()
                - hung.gate().leaf().weight().dry().pounds();
        double elastic = hung.sag().soil().soft().inches()
                - hung.sag().byCause().hingeSlack().inches();
        double rise = measured(NURSERY.design(), "sag.dry");
        assertThat(water).isPositive();
        assertThat(rise / elastic)
                .isCloseTo(water / hung.gate().leaf().weight().wet().pounds(), within(1e-12));
        assertThat(rise).isPositive().isLessThan(hung.limits().latch().inches());
    }

    /** A leaf of sheet has no wood to dry. */
    @Test
    void aLeafWithoutWoodStays() {
        Design sheet = NURSERY.with(
                        "\"bottomGap\": \"3\\\"\"", "\"bottomGap\": \"3\\\"\", \"fill\": { \"kind\": \"sheet\" }")
                .design();
        assertThat(Yard.findings(sheet, "sag.dry")).isEmpty();
    }

    /** Half of what the bar is loose in its keeper: a thumb latch 1/8 in. in all. */
    @Test
    void aLatchHasPlay() {
        assertThat(measured(NURSERY.design(), "latch.play")).isEqualTo(0.0625);
    }

    /** A 5/8 in. bar in guides 1/16 over and a 3/4 in. pipe, 0.824 inside: (0.0625 + 0.199) / 2 = 0.13075; the latch 1/16 beside it. */
    @Test
    void theRodOfAPairAddsItsOwn() {
        Design design = pair().with("\"swing\": \"in\"", "\"swing\": \"in\", \"meeting\": { \"rod\": \"ROD-0.625\" }")
                .design();
        assertThat(measured(design, "latch.play")).isCloseTo(0.13075 + 0.0625, within(1e-12));
        PairDesign pair = Yard.gate(design).pair().orElseThrow();
        assertThat(measured(design, "pair.top")).isCloseTo(pair.topInService().inches() + 0.13075, within(1e-12));
    }

    /** Both leaves go away from each other, each by the play of its hinges at least. */
    @Test
    void theLatchOfAPairReachesAcrossBoth() {
        Design design = pair().design();
        double apart = 0;
        double height = 0;
        for (HungLeaf leaf : Yard.gate(design).hung()) {
            apart += Math.max(0, -leaf.sag().gust().away().inches())
                    + leaf.gate().hinge().slack().inches();
            height += Math.abs(leaf.sag().gust().down().inches());
        }
        Finding reach = Yard.findings(design, "pair.reach").get(0);
        HungLeaf leaf = Yard.gate(design).hung().get(0);
        assertThat(reach.measure().orElseThrow().ratio().orElseThrow())
                .isCloseTo(
                        Math.max(
                                apart / leaf.limits().bite().inches(),
                                height / leaf.limits().latch().inches()),
                        within(1e-12));
        assertThat(reach.severity()).isEqualTo(Severity.PASS);
    }
}
