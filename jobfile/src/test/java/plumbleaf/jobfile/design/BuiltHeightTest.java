package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;

/** Ground that falls 2 ft in 48: a level top stands 2 ft higher at the low end than the run asks, a racked one nowhere. */
class BuiltHeightTest {
    private static List<Finding> told(String fit) {
        return Yard.findings(new Yard("""
                { "format": "plumbleaf-job", "version": 1, "title": "Gorse Bank", "date": "2027-04-19",
                  "site": { "wind": { "speed": "115 mph", "exposure": "C" },
                    "frost": { "depth": "24\\"", "source": "by phone" }, "soil": { "kind": "sand", "state": "medium" } },
                  "ground": { "shots": [ { "id": "S1", "run": "R1", "station": "0'", "elevation": "0\\"" },
                    { "id": "S2", "run": "R1", "station": "48'", "elevation": "-24\\"" } ] },
                  "runs": [ { "id": "R1", "legs": [ { "length": "48'" } ], "style": "wood-side-by-side", "infill": "6'",
                    "bottomGap": "2\\"", "fit": "FIT" } ],
                  "money": { "priceBook": "example-2027" } }
                """.replace("FIT", fit)).design(), "wind.built-height");
    }

    @Test
    void aLevelTopOverFallingGroundIsToldWithBothHeights() {
        List<Finding> told = told("level-top");
        assertThat(told).hasSize(1);
        assertThat(told.get(0).severity()).isEqualTo(Severity.CAUTION);
        assertThat(told.get(0).message())
                .contains("a fence 6' 2\" high, as asked")
                .contains("stands 8' 2\" over");
    }

    @Test
    void oneThatIsAsHighAsAskedIsNot() {
        assertThat(told("racked")).isEmpty();
    }
}
