package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.line.Bay;

/** Rails come from stock of one length: where a fair top crosses a dip more steeply than the ground, posts stand closer by themselves. */
class RailReachTest {
    private static Design brook(String maxBay, String more) {
        return new Yard("""
                { "format": "plumbleaf-job", "version": 1, "title": "Brook side", "date": "2027-08-02",
                  "site": { "basis": "customary", "wind": { "speed": "105 mph", "exposure": "C" },
                    "frost": { "depth": "30\\"", "source": "by phone" }, "soil": { "kind": "sand", "state": "medium" } },
                  "ground": { "shots": [
                    { "id": "S1", "run": "R1", "station": "0'", "elevation": "0 in" },
                    { "id": "S2", "run": "R1", "station": "30'", "elevation": "-19.25 in" },
                    { "id": "S3", "run": "R1", "station": "60'", "elevation": "-52.5 in" },
                    { "id": "S4", "run": "R1", "station": "90'", "elevation": "-101.25 in" },
                    { "id": "S5", "run": "R1", "station": "120'", "elevation": "-113.25 in" },
                    { "id": "S6", "run": "R1", "station": "150'", "elevation": "-105.5 in" },
                    { "id": "S7", "run": "R1", "station": "180'", "elevation": "-117 in" },
                    { "id": "S8", "run": "R1", "station": "210'", "elevation": "-134.75 in" },
                    { "id": "S9", "run": "R1", "station": "240'", "elevation": "-152 in" } ] },
                  "runs": [ { "id": "R1", "legs": [ { "length": "240'" } ], "style": "pipe-and-mesh",
                    "infill": "4' 6\\"", "bottomGap": "3\\"", "maxBay": "MAX" MORE } ],
                  "money": { "priceBook": "example-2027" } }
                """.replace("MAX", maxBay).replace("MORE", more)).design();
    }

    private static double longestIn(Design design) {
        return design.layout().runs().get(0).bays().stream()
                .mapToDouble(bay -> bay.slopeLength().inches())
                .max()
                .orElseThrow();
    }

    private static List<Finding> bay(Design design) {
        return design.findings().stream()
                .filter(finding -> finding.id().equals("line.bay"))
                .toList();
    }

    @Test
    void noBayPassesTheLongestAtAnyLimit() {
        for (int limit = 60; limit <= 144; limit++) {
            Design design = brook(limit + " in", "");
            assertThat(bay(design))
                    .as(limit + " in")
                    .extracting(Finding::severity)
                    .containsOnly(Severity.PASS);
        }
    }

    /** Fewest bays still: none is spent where none is needed. */
    @Test
    void noMoreThanOneBayIsAdded() {
        for (double feet : new double[] {6, 7, 7.5, 8, 10}) {
            List<Bay> bays = brook(feet + "'", "").layout().runs().get(0).bays();
            assertThat(bays.size())
                    .as(feet + " ft")
                    .isBetween((int) Math.ceil(240 / feet), (int) Math.ceil(240 / feet) + 1);
        }
    }

    @Test
    void whatNoPostCanMendIsSaidAndNothingElseComesCloser() {
        Design design = brook("8'", ", \"noDig\": [ { \"from\": \"110'\", \"to\": \"130'\", \"why\": \"pipe\" } ]");
        assertThat(bay(design)).extracting(Finding::severity).containsOnly(Severity.MUST_FIX);
        assertThat(longestIn(design)).isGreaterThan(240);
        assertThat(design.layout().runs().get(0).bays()).hasSizeBetween(29, 31);
    }

    /** The same brook seventeen times, there and back: more than five hundred bays, and none is left too long for its rails. */
    @Test
    void aRunOfThreeQuartersOfAMileIsSplitToo() {
        double[] falls = {-19.25, -33.25, -48.75, -12, 7.75, -11.5, -17.75, -17.25};
        StringBuilder shots =
                new StringBuilder("{ \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0 in\" }");
        double elevation = 0;
        int last = 17 * falls.length;
        for (int i = 0; i < last; i++) {
            boolean back = i / falls.length % 2 == 1;
            int at = i % falls.length;
            elevation += back ? -falls[falls.length - 1 - at] : falls[at];
            shots.append(", { \"id\": \"S" + (i + 2) + "\", \"run\": \"R1\", \"station\": \"" + 30 * (i + 1)
                    + "'\", \"elevation\": \"" + elevation + " in\" }");
        }
        Design design = new Yard("""
                { "format": "plumbleaf-job", "version": 1, "title": "Brook side", "date": "2027-08-02",
                  "site": { "basis": "customary", "wind": { "speed": "105 mph", "exposure": "C" },
                    "frost": { "depth": "30\\"", "source": "by phone" }, "soil": { "kind": "sand", "state": "medium" } },
                  "ground": { "shots": [ SHOTS ] },
                  "runs": [ { "id": "R1", "legs": [ { "length": "LENGTH'" } ], "style": "pipe-and-mesh",
                    "infill": "4' 6\\"", "bottomGap": "3\\"", "maxBay": "8'" } ],
                  "money": { "priceBook": "example-2027" } }
                """.replace("SHOTS", shots.toString()).replace("LENGTH", "" + 30 * last)).design();
        assertThat(design.layout().runs().get(0).bays()).hasSizeGreaterThan(500);
        assertThat(bay(design)).extracting(Finding::severity).containsOnly(Severity.PASS);
        assertThat(longestIn(design)).isLessThanOrEqualTo(96 + 1e-6);
    }
}
