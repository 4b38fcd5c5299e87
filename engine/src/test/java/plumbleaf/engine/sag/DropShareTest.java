package plumbleaf.engine.sag;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.frame.Stretch;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.section.Section;

/** The members of a leaf add up to its share of the drop, and what each gives in its plane is what its stretches give by Simpson's rule. */
class DropShareTest {
    @ParameterizedTest
    @CsvSource({"46, 66, 1, 0, 2", "70, 60, 0, 0.08, 2", "70, 48, 2, -0.1, 3", "40, 44, 0, -0.2, 4"})
    void theMembersAddUpToTheLeaf(double width, double height, int braces, double slope, int hinges) {
        Leaf leaf = HungGates.clad(HungGates.leaf(width, height, braces, slope, hinges, SwingWay.IN), 120, 1);
        GateSag sag = Sags.of(
                HungGates.gate(leaf, HungGates.SQUARE_POST), HungLoads.person(Force.pounds(200)), LifeJudgement.USUAL);
        assertThat(sag.leafShares()).hasSize(leaf.members().size());
        double sum = 0;
        for (DropShare share : sag.leafShares()) {
            sum += share.totalIn();
            assertThat(bentIn(share)).as(share.member().id()).isCloseTo(share.inPlaneIn(), within(1e-12));
        }
        assertThat(sum).isCloseTo(sag.byCause().leaf().inches(), within(1e-9));
    }

    private static double bentIn(DropShare share) {
        Section section = share.member().section();
        double sum = 0;
        for (Stretch each : share.stretches())
            sum += each.lengthIn()
                    / 6
                    * (each.loads().get(0).mzLbIn() * each.one().get(0).mzLbIn()
                            + 4
                                    * each.loads().get(1).mzLbIn()
                                    * each.one().get(1).mzLbIn()
                            + each.loads().get(2).mzLbIn() * each.one().get(2).mzLbIn());
        return sum / (section.elasticModulus().psi() * section.ixIn4());
    }
}
