package plumbleaf.engine.gate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumbleaf.engine.job.HingeSpec;
import plumbleaf.engine.job.Joint;
import plumbleaf.engine.job.MeshEdge;
import plumbleaf.engine.job.Side;
import plumbleaf.engine.job.SwingWay;
import plumbleaf.engine.job.TopEdge;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;
import plumbleaf.engine.quantity.Slope;
import plumbleaf.engine.section.Section;
import plumbleaf.engine.section.Shape;

/** Steel pickets, mesh and sheet in a leaf: counts, gaps, lengths, weights and where they land. */
class SteelInfillTest {
    private static final Section PICKET = GateSamples.section("PICKET", Shape.SQUARE, 0.75, 0.065, 0.57);

    private static Leaf leaf(Cladding cladding, double slope, Crest crest) {
        Outline outline = new Outline(
                Offset.inches(0.375),
                Offset.inches(48.375),
                Offset.inches(3),
                Offset.inches(63),
                Slope.ratio(slope),
                Slope.ratio(slope),
                Length.ZERO,
                crest);
        return LeafMaker.make(
                "G1a",
                new Hand(Side.LEFT, SwingWay.IN),
                outline,
                GateSamples.parts(cladding, Joint.MITERED, 0),
                1,
                new HingeSpec("hinge", Length.inches(9), Length.inches(9), 2, 0),
                Offset.inches(42));
    }

    @ParameterizedTest
    @CsvSource({"44,0.75,3.875", "44,0.75,4", "31.25,0.625,3.5", "100,1,2"})
    void gapsAreEqualAndNoneIsWiderThanAllowed(double clear, double picket, double most) {
        int count = SteelPickets.count(clear, picket, most);
        double gap = (clear - count * picket) / (count + 1);
        assertThat(gap).isLessThanOrEqualTo(most + 1e-9);
        double fewer = (clear - (count - 1) * picket) / count;
        assertThat(fewer).as("with one picket less").isGreaterThan(most);
    }

    @Test
    void punchedPicketsPassEveryRailAndEndAtTheCrest() {
        Crest arch = new Crest(Length.inches(5), new TopEdge.Arched(Length.inches(6)));
        Leaf leaf = leaf(new Cladding.Pickets(PICKET, Length.inches(3.875), true), 0, arch);
        assertThat(leaf.pickets()).hasSize(9);
        for (Picket picket : leaf.pickets()) {
            double middle = picket.r().inches() + 0.375;
            assertThat(picket.length().inches())
                    .isCloseTo(leaf.outline().crestIn(middle) - leaf.outline().bottomIn(middle), within(1e-9));
        }
        for (Member rail : leaf.rails())
            assertThat(rail.holes()).hasSize(9).allMatch(hole -> hole.what().equals("picket, square punch"));
        assertThat(leaf.welds().get(leaf.welds().size() - 1).runs()).isEqualTo(9 * 3 * 2);
    }

    @Test
    void cutInPicketsHaveAPieceInEachPanel() {
        Leaf leaf = leaf(new Cladding.Pickets(PICKET, Length.inches(3.875), false), 0.1, Crest.LEVEL_WITH_FRAME);
        assertThat(leaf.pickets()).hasSize(18);
        assertThat(leaf.picketEdges().positions()).hasSize(18);
        Picket piece = leaf.pickets().get(0);
        assertThat(piece.longPoint().inches() - piece.length().inches()).isCloseTo(0.75 * 0.1, within(1e-9));
        assertThat(leaf.rails()).allMatch(rail -> rail.holes().isEmpty());
    }

    @Test
    void theRailsCarryAllThatHangsOnThem() {
        for (Cladding cladding : List.of(
                new Cladding.Pickets(PICKET, Length.inches(3.875), true),
                new Cladding.Pickets(PICKET, Length.inches(3.875), false),
                new Cladding.Mesh(false, Length.inches(0.192), Length.inches(2), MeshEdge.ANGLE),
                new Cladding.Sheet(Length.inches(0.0598), MeshEdge.DIRECT))) {
            Leaf leaf = leaf(cladding, 0.05, Crest.LEVEL_WITH_FRAME);
            double hung = 0;
            for (RailLoad load : leaf.railLoads()) hung += load.wet().pounds();
            double bare =
                    leaf.weight().frame().pounds() + leaf.weight().hardware().pounds();
            assertThat(leaf.weight().wet().pounds() - bare).isCloseTo(hung, within(1e-9));
            assertThat(leaf.weight().dry().pounds())
                    .isCloseTo(leaf.weight().wet().pounds(), within(1e-9));
        }
    }

    @Test
    void aSheetWeighsItsAreaByItsThickness() {
        Leaf leaf = leaf(new Cladding.Sheet(Length.inches(0.0598), MeshEdge.DIRECT), 0, Crest.LEVEL_WITH_FRAME);
        double area = 44 * (60 - 3 * 2);
        double pounds = 0;
        for (Panel panel : leaf.panels()) pounds += panel.weight().pounds();
        assertThat(pounds).isCloseTo(area * 0.0598 * 490 / 1728, within(1e-9));
    }

    @Test
    void meshIsAsSolidAsItsWires() {
        Cladding.Mesh mesh = new Cladding.Mesh(false, Length.inches(0.2), Length.inches(2), MeshEdge.DIRECT);
        assertThat(mesh.solidShare()).isCloseTo(0.19, within(1e-12));
        assertThat(mesh.poundsPerIn2(1)).isCloseTo(Math.PI / 4 * 0.04, within(1e-12));
    }
}
