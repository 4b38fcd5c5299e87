package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafTrim;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.gate.Place;

/** A capped and trimmed fence with a gate in it: what finishes the fence goes over the leaf too. */
class LeafTrimTest {
    private static final String GATE = """
            "gates": [ { "id": "G1", "kind": "swing", "run": "R1", "station": "10'", "opening": "4'", "hinge": "left", "swing": "in", "opens": "90 deg",
                "holdOpen": "cane-bolt", "leaf": { "shape": "SHAPE", "infill": "5' 10\\"", "bottomGap": "3\\"" } } ],
            """;

    private static Design yard(String style, String shape) {
        return new Yard("""
                { "format": "plumbleaf-job", "version": 1, "title": "Fern Cap", "date": "2027-04-19",
                  "site": { "basis": "customary", "wind": { "speed": "105 mph", "exposure": "B" }, "frost": { "depth": "24\\"", "source": "by phone" },
                    "soil": { "kind": "sand", "state": "medium" } },
                  "ground": { "shots": [ { "id": "S1", "run": "R1", "station": "0'", "elevation": "0\\"" }, { "id": "S2", "run": "R1", "station": "24'", "elevation": "-12\\"" } ] },
                  "runs": [ { "id": "R1", "style": "STYLE", "infill": "6'", "legs": [ { "length": "24'" } ] } ],
                  GATES
                  "money": { "priceBook": "example-2027" } }
                """.replace("GATES", GATE.replace("SHAPE", shape)).replace("STYLE", style)).design();
    }

    private static Leaf leaf(Design design) {
        return Yard.gate(design).plan().leaves().get(0);
    }

    private static LeafTrim of(Leaf leaf, String use) {
        return leaf.trim().stream()
                .filter(trim -> trim.use().equals(use))
                .findFirst()
                .orElseThrow();
    }

    private static double topIn(Picket board) {
        return board.middle().inches() + board.length().inches() / 2;
    }

    @Test
    void theCapLiesOnFrameAndBoardsInsideTheHeightOfTheInfill() {
        Leaf leaf = leaf(yard("wood-capped", "square"));
        assertThat(leaf.trim()).extracting(LeafTrim::use).containsExactly("cap", "fascia", "kick");
        List<Place> cap = of(leaf, "cap").corners();
        double frameTop = leaf.outline().corners().get(3).z().inches();
        double foot = leaf.outline().corners().get(0).z().inches();
        assertThat(cap.get(0).z().inches()).isCloseTo(frameTop, within(1e-9));
        assertThat(cap.get(3).z().inches() - foot).as("5' 10\" over all").isCloseTo(70, within(1e-9));
        assertThat(leaf.pickets()).allSatisfy(board -> assertThat(topIn(board)).isCloseTo(frameTop, within(1e-9)));
        assertThat(of(leaf, "fascia").corners().get(3).z().inches()).isCloseTo(frameTop, within(1e-9));
        assertThat(of(leaf, "kick").corners().get(0).z().inches()).isCloseTo(foot, within(1e-9));
        for (LeafTrim trim : leaf.trim())
            assertThat(trim.longPoint().inches()).isCloseTo(leaf.width().inches(), within(1e-9));
    }

    @Test
    void onARakedLeafTheirEndsStandPlumb() {
        Leaf leaf = leaf(yard("wood-capped", "raked"));
        LeafTrim fascia = of(leaf, "fascia");
        double grade = leaf.outline().top().ratio();
        assertThat(Math.abs(grade)).isGreaterThan(0.03);
        double along = leaf.width().inches() * Math.sqrt(1 + grade * grade);
        assertThat(fascia.length().inches()).isCloseTo(along, within(1e-9));
        assertThat(fascia.longPoint().inches()).isCloseTo(along + 3.5 * Math.abs(grade), within(1e-9));
        assertThat(StrictMath.tan(fascia.endFromSquare().radians())).isCloseTo(Math.abs(grade), within(1e-9));
    }

    /** Weighed as cut, by hand: cedar of the tables, wet. */
    @Test
    void itIsWeighedBoughtAndCut() {
        Design trimmed = yard("wood-capped", "square");
        Design plain = yard("wood-side-by-side", "square");
        Leaf leaf = leaf(trimmed);
        double trimLb =
                leaf.trim().stream().mapToDouble(trim -> trim.wet().pounds()).sum();
        double feet = leaf.width().inFeet();
        assertThat(trimLb / feet)
                .as("16.5 in2 and 5 in2 of wood for a foot at about 26 and 40 lb a cubic foot")
                .isBetween(3.0, 8.0);
        assertThat(leaf.weight().wet().pounds() - leaf(plain).weight().wet().pounds())
                .as("less the ends of the boards under the cap")
                .isBetween(0.75 * trimLb, trimLb);
        double onRails = leaf.railLoads().stream()
                .mapToDouble(load -> load.wet().pounds())
                .sum();
        double wood = trimLb
                + leaf.nailers().stream()
                        .mapToDouble(each -> each.wet().pounds())
                        .sum()
                + leaf.pickets().stream()
                        .mapToDouble(each -> each.wet().pounds())
                        .sum();
        assertThat(onRails).isCloseTo(wood, within(1e-6));
        assertThat(trimmed.quote().takeoff().lines())
                .filteredOn(line ->
                        line.causes().stream().anyMatch(cause -> cause.part().equals("G1a.cap")))
                .extracting(line -> line.sold().item())
                .containsExactly("cap-2x6/western_redcedar");
        assertThat(Yard.findings(trimmed, "leaf.trim")).isEmpty();
        assertThat(Yard.findings(yard("wood-lattice-top", "square"), "leaf.trim"))
                .hasSize(1);
    }
}
