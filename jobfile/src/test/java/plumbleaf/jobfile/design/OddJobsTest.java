package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.jobfile.result.ResultFile;

/** A job that reads well gets a design with findings, however odd the yard. Each of these once stopped the calculation. */
class OddJobsTest {
    private static Design designed(Yard yard) {
        Design design = yard.design();
        assertThat(design.findings()).isNotEmpty();
        assertThat(ResultFile.write(design)).doesNotContain("NaN", "Infinity");
        return design;
    }

    /** Shots along a slanted leg are rounded to the grid, and three of them make no plane. */
    @Test
    void aSlantedLegWithShotsOnItsLine() {
        for (String turn : List.of("60 deg right", "37 deg left", "1 deg left", "150 deg right"))
            designed(Yard.nursery().with("90 deg left", turn));
    }

    @Test
    void aFootingThatEndsInTheLooseTop() {
        Design design = designed(Yard.nursery().with("\"looseTop\": \"3\\\"\"", "\"looseTop\": \"4'\""));
        assertThat(Yard.gate(design).hung()).isEmpty();
        assertThat(Yard.findings(design, "sag.not-worked-out")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CANNOT_SAY);
            assertThat(finding.message())
                    .endsWith("its footing does not reach below the loose top of the soil. Dig deeper.");
        });
        assertThat(Yard.findings(design, "footing.loose-top"))
                .isNotEmpty()
                .allSatisfy(finding -> assertThat(finding.severity()).isEqualTo(Severity.MUST_FIX));
    }

    /** Where no depth is written, the footing goes through the loose top by itself. */
    @Test
    void aDepthLeftOpenGoesThroughTheLooseTop() {
        Design design = designed(Yard.nursery()
                .with("\"looseTop\": \"3\\\"\"", "\"looseTop\": \"4'\"")
                .with("\"hole\": \"10\\\"\", \"depth\": \"36\\\"\"", "\"hole\": \"10\\\"\""));
        assertThat(Yard.findings(design, "footing.loose-top"))
                .extracting(Finding::part)
                .containsExactlyInAnyOrder("F5", "F6");
    }
}
