package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;

/** A slide leaf of 16 ft with 25 ft of run-back along the first 30 ft of its fence: what stands and moves there. */
class SlideRoomTest {
    private static final Yard FALLOW = Yard.fallow();

    private static List<Finding> room(Yard yard) {
        return yard.design().findings().stream()
                .filter(finding -> finding.id().equals("slide.room"))
                .toList();
    }

    private static Yard ruled(String rules) {
        return FALLOW.with("\"gap\": { \"largest\"", rules + ", \"gap\": { \"largest\"");
    }

    private static Yard lotLine(String inside) {
        return ruled(
                "\"propertyLines\": [{ \"what\": \"lot line\", \"certifiedBy\": \"survey\", \"setback\": \"12\\\"\", \"points\": ["
                        + "{ \"east\": \"-10'\", \"north\": \"" + inside + "\" }, { \"east\": \"90'\", \"north\": \""
                        + inside + "\" }] }]");
    }

    @Test
    void nothingNearIsSaidWithTheRunBackItNeeds() {
        assertThat(room(FALLOW)).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.PASS);
            assertThat(finding.message()).startsWith("G1: its leaf needs 25' 4\" of run-back");
        });
    }

    /** The run bears 96 degrees, so a line due east crosses it and its leaf. */
    @Test
    void aLotLineThroughTheWayMustBeMended() {
        assertThat(room(lotLine("-2'"))).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.MUST_FIX);
            assertThat(finding.message()).contains("crosses the lot line");
        });
        assertThat(room(lotLine("40'")))
                .singleElement()
                .satisfies(finding -> assertThat(finding.severity()).isEqualTo(Severity.PASS));
    }

    /** The leaf runs straight on where its fence turns to the side it runs on. */
    @Test
    void aFenceThatTurnsIntoTheWayMustBeMended() {
        Yard straight = FALLOW.with("\"length\": \"60'\"", "\"length\": \"62'\"");
        Yard turning = FALLOW.with(
                        "\"legs\": [{ \"length\": \"60'\", \"bearing\": \"96 deg\", \"taped\": \"level\" }]",
                        "\"legs\": [{ \"length\": \"18'\", \"bearing\": \"186 deg\" },"
                                + " { \"length\": \"60'\", \"bearing\": \"96 deg\" }]")
                .with("\"station\": \"30'\", \"opening\"", "\"station\": \"38'\", \"opening\"");
        assertThat(room(straight)).allMatch(finding -> finding.severity() == Severity.PASS);
        assertThat(room(turning)).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.MUST_FIX);
            assertThat(finding.message()).contains("runs into the fence between");
        });
    }

    /** A walk gate in the run-back that swings to the side the leaf runs on. */
    @Test
    void aGateThatSwingsIntoTheWayMustBeMended() {
        String walk =
                "\"gates\": [ { \"id\": \"G2\", \"kind\": \"swing\", \"run\": \"R1\", \"station\": \"8'\", \"opening\": \"4'\","
                        + " \"hinge\": \"left\", \"swing\": \"WAY\" },";
        assertThat(room(withWalkGate(walk.replace("WAY", "in")))).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.MUST_FIX);
            assertThat(finding.message()).contains("the swing of G2");
        });
        assertThat(room(withWalkGate(walk.replace("WAY", "out")))).anySatisfy(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.message()).contains("bars it");
        });
    }

    private static Yard withWalkGate(String gates) {
        return FALLOW.with("\"gates\": [", gates)
                .with(
                        "\"builds\": {",
                        "\"builds\": { \"G2\": { \"frame\": \"TUBE-2x2x0.083\", \"hingePost\": \"F1083-REG-2.5\", \"hole\": \"12\\\"\","
                                + " \"depth\": \"36\\\"\" },");
    }
}
