package plumbleaf.reference.style;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.cutting.ProvenCutPlanner;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.Designs;
import plumbleaf.engine.job.Job;
import plumbleaf.engine.takeoff.TakeoffLine;
import plumbleaf.jobfile.catalogue.StandardCatalogue;
import plumbleaf.jobfile.catalogue.StandardTables;
import plumbleaf.jobfile.job.JobFile;
import plumbleaf.jobfile.pricebook.PriceBooks;

/**
 * What a hundred feet of level chain link 6 ft high takes, with posts 10 ft apart and two ends, counted by hand by the rules of the trade.
 * Source: common practice, no source: fabric in rolls of 50 ft, swaged rail in 21 ft lengths, one tension bar an end, a band a foot, ties a foot apart up line posts and 2 ft
 * along the rail, a brace rail and truss rod at each end of 6 ft fabric.
 * Tolerance: none; the counts are whole.
 */
class ChainLinkCheck {
    private static final String JOB = """
            { "format": "plumbleaf-job", "version": 1, "title": "Link", "date": "2027-04-19",
              "site": { "basis": "customary", "wind": { "speed": "105 mph", "exposure": "B" } },
              "ground": { "shots": [ { "id": "S1", "run": "R1", "station": "0'", "elevation": "0\\"" } ] },
              "runs": [ { "id": "R1", "legs": [ { "length": "100'" } ], "style": "chain-link", "infill": "6'", "maxBay": "10'" } ] }
            """;

    private static Design design() {
        Job job = JobFile.read("job", JOB, StandardCatalogue.load()).job().orElseThrow();
        return Designs.of(
                job,
                StandardCatalogue.load(),
                StandardTables.load().standards(),
                PriceBooks.of(job).orElseThrow(),
                new ProvenCutPlanner());
    }

    private static TakeoffLine line(Design design, String item) {
        return design.quote().takeoff().lines().stream()
                .filter(each -> each.item().equals(item))
                .findFirst()
                .orElseThrow(() -> new AssertionError("nothing of " + item));
    }

    @Test
    void countsByHand() {
        Design design = design();
        assertThat(design.posts()).hasSize(11);
        assertThat(line(design, "fabric-72-0.148x2").units()).isEqualTo(2);
        assertThat(line(design, "SWAGED-LIGHT-1.375x0.065").net()).isEqualTo(120);
        assertThat(line(design, "SWAGED-LIGHT-1.375x0.065").units()).isEqualTo(6);
        assertThat(line(design, "tension-bar-72").net()).isEqualTo(2);
        assertThat(line(design, "tension-band-2.875").net()).isEqualTo(12);
        assertThat(line(design, "brace-band-2.875").net()).isEqualTo(8);
        assertThat(line(design, "rail-end-1.375").net()).isEqualTo(6);
        assertThat(line(design, "truss-rod").net()).isEqualTo(2);
        assertThat(line(design, "loop-cap-2.375x1.375").net()).isEqualTo(9);
        assertThat(line(design, "post-cap-round-2.875").net()).isEqualTo(2);
        assertThat(line(design, "fabric-tie").net()).isEqualTo(9 * 6 + 10 * 5);
        assertThat(line(design, "hog-ring").net()).isEqualTo(10 * 5);
        assertThat(line(design, "tension-wire").net()).isEqualTo(100);
    }
}
