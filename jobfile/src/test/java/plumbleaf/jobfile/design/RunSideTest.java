package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.line.Bay;

/** A yard whose street side is engineered, on posts of its own: what that side asks for is not built all round. */
class RunSideTest {
    private static final String SIDE =
            ", \"sides\": [ { \"from\": \"0'\", \"to\": \"48'\", \"basis\": \"engineered\", \"post\": \"F1083-REG-2.5\" } ]";

    private static Design yard(String basis, String sides) {
        return Yard.ofBoards(
                        basis,
                        "\"speed\": \"115 mph\", \"exposure\": \"C\"",
                        new int[][] {{0, 0}, {96, 0}},
                        "\"infill\": \"6'\", \"legs\": [ { \"length\": \"48'\" }, { \"length\": \"48'\", \"turn\": \"90 deg left\" } ]"
                                + sides,
                        "")
                .design();
    }

    private static long bays(Design design, double fromIn, double toIn) {
        return design.layout().bays().stream()
                .map(Bay::start)
                .filter(start -> start.inches() >= fromIn - 1 && start.inches() < toIn - 1)
                .count();
    }

    private static String section(Design design, double stationIn) {
        return design.posts().stream()
                .filter(post -> Math.abs(post.post().station().inches() - stationIn) < 1)
                .map(post -> post.section().id())
                .findFirst()
                .orElseThrow();
    }

    /** What may be built freely before it lets no bay of the engineered side reach farther than the wind allows. */
    @Test
    void anEngineeredSideBehindACustomaryOneKeepsItsSpacing() {
        Design split =
                yard("customary", ", \"sides\": [ { \"from\": \"20'\", \"to\": \"48'\", \"basis\": \"engineered\" } ]");
        assertThat(bays(split, 240, 576)).isGreaterThan(bays(yard("customary", ""), 240, 576));
        assertThat(split.posts())
                .filteredOn(post -> post.post().station().inches() > 300
                        && post.post().station().inches() < 570)
                .isNotEmpty()
                .allSatisfy(post -> assertThat(post.check().utilisation()).isLessThanOrEqualTo(1.0));
    }

    @Test
    void onlyTheEngineeredSideIsBuiltForTheCodesWind() {
        Design customary = yard("customary", "");
        Design split = yard("customary", SIDE);
        Design engineered = yard("engineered", "");
        assertThat(bays(split, 576, 1152)).isEqualTo(bays(customary, 576, 1152));
        assertThat(bays(split, 0, 576)).isGreaterThan(bays(customary, 0, 576));
        assertThat(bays(engineered, 576, 1152)).isGreaterThan(bays(split, 576, 1152));
        assertThat(section(split, 0)).isEqualTo("F1083-REG-2.5");
        assertThat(section(split, 1152)).isEqualTo(section(customary, 1152)).isNotEqualTo("F1083-REG-2.5");
        List<PostDesign> street = split.posts().stream()
                .filter(post -> post.post().station().inches() < 575)
                .toList();
        assertThat(street)
                .hasSizeGreaterThan(6)
                .allSatisfy(post -> assertThat(post.check().utilisation()).isLessThanOrEqualTo(1));
        assertThat(split.quote().price().total())
                .isGreaterThan(customary.quote().price().total());
    }

    @Test
    void theSideIsTold() {
        List<Finding> told = Yard.findings(yard("customary", SIDE), "post.side");
        assertThat(told).hasSize(1);
        assertThat(told.get(0).severity()).isEqualTo(Severity.PASS);
        assertThat(told.get(0).message())
                .contains("from station 0\" to 48' 0\" is engineered, on posts of its own")
                .contains("the rest of the run is customary");
    }
}
