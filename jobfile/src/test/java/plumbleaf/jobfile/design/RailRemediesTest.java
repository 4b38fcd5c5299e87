package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.line.Bay;

/** On heavy posts the wind lets posts of 8 ft bays stand, and near the free ends it bends the rails too much. */
class RailRemediesTest {
    private static Design yard(String run) {
        return Yard.ofBoards(
                        "engineered",
                        "\"speed\": \"95 mph\", \"exposure\": \"B\"",
                        new int[][] {{0, 0}, {96, 0}},
                        "\"infill\": \"6'\", \"legs\": [ { \"length\": \"96'\" } ]" + run,
                        "\"post\": \"F1083-REG-4\"")
                .design();
    }

    private static List<Finding> failing(Design design) {
        return Yard.findings(design, "rail.wind").stream()
                .filter(finding -> finding.severity() == Severity.MUST_FIX)
                .toList();
    }

    private static Remedy remedy(Finding finding, String id) {
        return finding.remedies().stream()
                .filter(remedy -> remedy.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void postsAreOfferedCloserWhereRailsFailAndPricedAgainstCloserOnesAllAlong() {
        Design now = yard("");
        Finding bends = failing(now).get(0);
        Remedy there = remedy(bends, "closer-posts-there");
        Remedy everywhere = remedy(bends, "closer-posts");
        assertThat(there.ratio().orElseThrow()).isLessThanOrEqualTo(1);
        assertThat(there.priceChange().orElseThrow())
                .isLessThan(everywhere.priceChange().orElseThrow());
        assertThat(there.edit().orElseThrow())
                .startsWith("runs[R1].sides=0\" to ")
                .contains(" bays ");
        assertThat(everywhere.edit().orElseThrow()).startsWith("runs[R1].maxBay=");
    }

    /** What is offered holds once it is typed into the file, and the bays between keep their length. */
    @Test
    void aSideOfShorterBaysKeepsThem() {
        Design then = yard(
                ", \"sides\": [ { \"from\": \"0'\", \"to\": \"8'\", \"maxBay\": \"4'\" }, { \"from\": \"88'\", \"to\": \"96'\", \"maxBay\": \"4'\" } ]");
        List<Bay> bays = then.layout().run("R1").bays();
        for (Bay bay : bays) {
            boolean inside = bay.start().inches() < 96 - 1e-6 || bay.start().inches() >= 88 * 12;
            if (inside) assertThat(bay.level().inches()).as(bay.id()).isLessThanOrEqualTo(48.001);
        }
        assertThat(bays).anyMatch(bay -> bay.level().inches() > 72);
        assertThat(Yard.findings(then, "line.bay")).allMatch(finding -> finding.severity() == Severity.PASS);
    }
}
