package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.line.Bay;

@Tag("slow")
class WindSpacingTest {
    private static final Yard ENGINEERED = Yard.nursery().with("\"basis\": \"customary\"", "\"basis\": \"engineered\"");

    private static double longestBay(Design design) {
        return design.layout().bays().stream()
                .map(Bay::level)
                .mapToDouble(level -> level.inches())
                .max()
                .orElseThrow();
    }

    @Test
    void anEngineeredRunSetsItsPostsAsNearAsTheWindAsks() {
        Design customary = Yard.nursery().design();
        Design engineered = ENGINEERED.design();
        assertThat(longestBay(customary)).isGreaterThan(80);
        assertThat(longestBay(engineered)).isLessThan(longestBay(customary));
        assertThat(Yard.findings(customary, "post.wind")).anyMatch(finding -> finding.severity() == Severity.CAUTION);
    }

    /** The fence's own posts pass; those of the gate are picked, not placed. */
    @Test
    void noLinePostOfAnEngineeredRunBendsTooFar() {
        Design design = ENGINEERED.design();
        assertThat(design.posts())
                .filteredOn(post -> post.post().gate().isEmpty())
                .hasSizeGreaterThan(8)
                .allSatisfy(post -> assertThat(post.check().utilisation()).isLessThanOrEqualTo(1));
        assertThat(Yard.findings(design, "post.wind"))
                .filteredOn(finding ->
                        design.post(finding.part()).orElseThrow().post().gate().isEmpty())
                .isNotEmpty()
                .extracting(Finding::severity)
                .containsOnly(Severity.PASS);
    }

    @Test
    void aRunOfItsOwnBasisIsSpacedByIt() {
        Yard customarySite = Yard.nursery()
                .with("\"id\": \"R1\", \"outside\"", "\"id\": \"R1\", \"basis\": \"engineered\", \"outside\"");
        assertThat(longestBay(customarySite.design())).isEqualTo(longestBay(ENGINEERED.design()));
        Yard engineeredSite =
                ENGINEERED.with("\"id\": \"R1\", \"outside\"", "\"id\": \"R1\", \"basis\": \"customary\", \"outside\"");
        assertThat(longestBay(engineeredSite.design()))
                .isEqualTo(longestBay(Yard.nursery().design()));
    }
}
