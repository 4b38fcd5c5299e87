package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;

/** A gate on a run of which only the line was shot: what the run says of its cross slope is the ground the leaf swings over. */
@Tag("slow")
class CrossSlopeTest {
    private static final String SAID = "\"crossSlope\": \"0%\"";
    private static final Yard LINE_ONLY = new Yard("""
            { "format": "plumbleaf-job", "version": 1, "title": "Heron field", "date": "2027-05-03", "display": "us",
              "ground": { "shots": [
                { "id": "S1", "run": "R1", "station": "0'", "elevation": "0\\"" },
                { "id": "S2", "run": "R1", "station": "24'", "elevation": "0\\"" } ] },
              "runs": [ { "id": "R1", "legs": [ { "length": "24'", "bearing": "90 deg" } ],
                  "style": "wood-side-by-side", "crossSlope": "0%" } ],
              "gates": [ { "id": "G1", "kind": "swing", "run": "R1", "station": "8'", "opening": "4'",
                  "hinge": "left", "swing": "in", "opens": "90 deg" } ],
              "money": { "priceBook": "example-2027" } }
            """);

    private static double least(Design design) {
        return Yard.gate(design).plan().swing().orElseThrow().least().clear().inches();
    }

    @Test
    void groundThatRisesToTheSwingSideTakesItsRiseOffTheClearance() {
        double flat = least(LINE_ONLY.design());
        double rising = least(LINE_ONLY.with(SAID, "\"crossSlope\": \"6%\"").design());
        // Open at 90 degrees the tip is about 47 in. off the line: 6 % of it is 2.8 in., and it is the tip that is
        // lowest.
        assertThat(flat - rising).isBetween(2.5, 3.0);
    }

    @Test
    void groundThatFallsAwayTakesNothing() {
        assertThat(least(LINE_ONLY.with(SAID, "\"crossSlope\": \"-6%\"").design()))
                .isGreaterThanOrEqualTo(least(LINE_ONLY.design()) - 1e-9);
    }

    @Test
    void outsideIsTheOtherWay() {
        Yard out = LINE_ONLY.with("\"swing\": \"in\"", "\"swing\": \"out\"");
        double flat = least(out.design());
        assertThat(flat - least(out.with(SAID, "\"crossSlope\": \"-6%\"").design()))
                .isBetween(2.5, 3.0);
    }

    @Test
    void theDesignSaysWhatItTookAndNobodySaidIsLevel() {
        assertThat(Yard.findings(LINE_ONLY.with(SAID, "\"crossSlope\": \"6%\"").design(), "ground.cross-slope"))
                .extracting(Finding::message)
                .singleElement()
                .asString()
                .contains("cross slope of 6 %");
        Yard unsaid = LINE_ONLY.with(", " + SAID, "");
        assertThat(least(unsaid.design())).isEqualTo(least(LINE_ONLY.design()));
        assertThat(Yard.findings(unsaid.design(), "ground.cross-slope"))
                .extracting(Finding::message)
                .singleElement()
                .asString()
                .contains("cross slope of 0 %");
    }
}
