package plumbleaf.reference.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.geometry.PlanLine;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.PostRole;

/**
 * A yard of 30 by 40 ft walked round with tapes across its corners: the diagonals of a rectangle of 30 and 40 are 50, so it closes; a side a foot short leaves
 * a foot open. A second run begins on the first one's line and shares its post.
 *
 * Source: plane geometry.
 *
 * Tolerance: 1e-6 in.
 */
class YardRingCheck {
    private static final String ROUND = ", \"ends\": [ \"free\", { \"kind\": \"joins\", \"run\": \"R1\" } ]";

    private static String legs(String last) {
        return "{ \"length\": \"30'\" }, { \"length\": \"40'\", \"diagonal\": \"50' left\" },"
                + "{ \"along\": \"0'\", \"off\": \"30' left\" }, { \"length\": \"" + last
                + "\", \"diagonal\": \"50' left\" }";
    }

    private static Finding finding(LaidOut laid, String id) {
        return laid.layout().findings().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aYardTapedByDiagonalsClosesOnItsFirstPost() {
        LaidOut laid = LaidOut.run(
                legs("40'"),
                ROUND + ", \"checks\": [ { \"from\": \"30'\", \"to\": \"100'\", \"taped\": \"50'\" } ]",
                0,
                0,
                140,
                0);
        PlanLine line = laid.layout().runs().get(0).line().line();
        assertThat(line.vertex(4).distanceTo(line.vertex(0)).inches()).isCloseTo(0, within(1e-6));
        assertThat(finding(laid, "line.closure").severity()).isEqualTo(Severity.PASS);
        assertThat(finding(laid, "line.check-tape").severity()).isEqualTo(Severity.PASS);
        List<Post> posts = laid.layout().runs().get(0).posts();
        assertThat(posts.get(0).role()).isEqualTo(PostRole.CORNER);
        assertThat(posts).filteredOn(post -> post.role() == PostRole.CORNER).hasSize(4);
        List<Bay> bays = laid.layout().bays();
        assertThat(bays.get(bays.size() - 1).to()).isEqualTo(posts.get(0).id());
        assertThat(posts).hasSize(bays.size());
    }

    @Test
    void aFootMissingIsAFootOpen() {
        LaidOut laid = LaidOut.run(
                "{ \"length\": \"30'\" }, { \"length\": \"40'\", \"turn\": \"90 deg left\" },{ \"length\": \"30'\","
                        + " \"turn\": \"90 deg left\" }, { \"length\": \"39'\", \"turn\": \"90 deg left\" }",
                ROUND + ", \"checks\": [ { \"from\": \"0'\", \"to\": \"70'\", \"taped\": \"49' 6\\\"\" } ]",
                0,
                0,
                139,
                0);
        Finding open = finding(laid, "line.closure");
        assertThat(open.severity()).isEqualTo(Severity.CAUTION);
        assertThat(open.message()).contains("comes back to its start 1' 0\" off after 139' 0\", 1 in 139");
        assertThat(finding(laid, "line.check-tape").message())
                .contains("the tape read 49' 6\"; its legs and corners make 50' 0\", 6\" off");
    }

    @Test
    void aRunThatBeginsOnAnotherSharesItsPost() {
        LaidOut laid = LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"ground\": { \"shots\": [ { \"id\": \"S1\","
                        + " \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0\\\"\" } ] },\"runs\": [ { \"id\":"
                        + " \"R1\", \"legs\": [ { \"length\": \"48'\", \"bearing\": \"45 deg\" } ], \"style\":"
                        + " \"wood-side-by-side\" },{ \"id\": \"R2\", \"start\": { \"run\": \"R1\", \"station\": \"19'\""
                        + " }, \"legs\": [ { \"length\": \"16'\", \"bearing\": \"135 deg\" } ], \"style\":"
                        + " \"wood-side-by-side\" } ] }");
        Post shared = laid.layout().runs().get(0).posts().stream()
                .filter(post -> Math.abs(post.station().inches() - 228) < 1e-6)
                .findFirst()
                .orElseThrow();
        assertThat(shared.role()).isEqualTo(PostRole.CORNER);
        assertThat(laid.layout().runs().get(1).bays().get(0).from()).isEqualTo(shared.id());
        assertThat(laid.layout()
                        .runs()
                        .get(1)
                        .line()
                        .line()
                        .vertex(0)
                        .distanceTo(shared.at())
                        .inches())
                .isCloseTo(0, within(1e-6));
    }
}
