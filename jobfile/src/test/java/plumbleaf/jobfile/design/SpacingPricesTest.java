package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.offer.SpacingPrices;

/** Each run priced with its posts nearer together: every price is that of the same job with that largest bay written in its file. */
class SpacingPricesTest {
    private static SpacingPrices.OfRun of(Yard yard) {
        return SpacingPrices.of(yard.design(), StandardCatalogue.load(), yard::designOf)
                .runs()
                .get(0);
    }

    private static Yard yard(String length, String style, String maxBay) {
        return new Yard("""
                { "format": "plumbleaf-job", "version": 1, "title": "Dray Lane", "date": "2027-04-19",
                  "site": { "basis": "customary", "wind": { "speed": "105 mph", "exposure": "B" },
                    "frost": { "depth": "24\\"", "source": "by phone" }, "soil": { "kind": "sand", "state": "medium" } },
                  "ground": { "shots": [ { "id": "S1", "run": "R1", "station": "0'", "elevation": "0\\"" },
                    { "id": "S2", "run": "R1", "station": "LENGTH", "elevation": "0\\"" } ] },
                  "runs": [ { "id": "R1", "legs": [ { "length": "LENGTH" } ], "style": "STYLE", "infill": "6'",
                    "maxBay": "BAY" } ],
                  "money": { "priceBook": "example-2027" } }
                """.replace("LENGTH", length).replace("STYLE", style).replace("BAY", maxBay));
    }

    @Test
    void eachWayCostsWhatTheJobWithThatBayCosts() {
        Yard yard = yard("48'", "wood-side-by-side", "8'");
        SpacingPrices.OfRun run = of(yard);
        assertThat(run.ways()).hasSizeGreaterThan(3);
        for (SpacingPrices.Way way : run.ways().subList(1, run.ways().size())) {
            Yard written = yard.with(
                    "\"maxBay\": \"8'\"",
                    "\"maxBay\": \"" + LengthText.exact(way.maxBay().inches()).replace("\"", "\\\"") + "\"");
            assertThat(way.total()).isEqualTo(written.design().quote().price().total());
            assertThat(way.bays()).isEqualTo(written.design().layout().bays().size());
        }
        assertThat(run.ways())
                .filteredOn(way -> way.mustFix() <= run.asItIs().mustFix())
                .allSatisfy(way -> assertThat(way.total())
                        .isGreaterThanOrEqualTo(run.cheapest().total()));
    }

    /** Six whole bays of 8 ft use whole sticks and six posts fewer than anything nearer: fewest bays govern, and the dearer next is told. */
    @Test
    void fewestBaysGovernWhereNothingIsWasted() {
        SpacingPrices.OfRun run = of(yard("48'", "wood-side-by-side", "8'"));
        assertThat(run.cheapest()).isEqualTo(run.asItIs());
        assertThat(run.words(DisplayUnits.US))
                .startsWith("Run R1 costs least with the fewest bays, 6 bays of at most 8' 0\". ")
                .contains(" add $")
                .contains("most of it");
    }
}
