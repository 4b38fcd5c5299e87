package plumbleaf.reference.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;

/**
 * What a place asks beyond strength, on a whole job: sight at a corner, an accessible way, wood by a house, dig days of a locate ticket, shut at night.
 *
 * Source: city zoning codes (3 ft in a sight triangle: Salem VA, Augusta GA, Scotia NY, Alameda CA); 2010 ADA Standards 404.2; plane geometry.
 * Tolerance: the verdict of each rule exactly; heights to 1e-6 in.
 */
class PlaceRulesCheck {
    private static List<Finding> with(String rules, String existing) throws IOException {
        String yard = PoolYard.text()
                .replace("\"rules\": {", "\"existing\": { " + existing + " }, \"rules\": { " + rules)
                .replace("\"uses\": [\"pool\"]", "\"uses\": [\"walk\"]");
        return PoolYard.findings(yard);
    }

    private static List<Severity> severities(List<Finding> findings, String id) {
        return findings.stream()
                .filter(finding -> finding.id().equals(id))
                .map(Finding::severity)
                .toList();
    }

    /** The fence lies on the east axis, 62 in. high, from 0 to 40 ft. */
    @Test
    void aCornerSeesOverNothingHigherThanThreeFeet() throws IOException {
        List<Finding> findings = with(
                "\"sights\": [ { \"what\": \"corner of Elm and Fourth\", \"east\": \"-5'\", \"north\": \"-1'\", \"first\": \"90 deg\", \"firstLeg\": \"20'\","
                        + " \"second\": \"0 deg\", \"secondLeg\": \"20'\" } ],",
                "");
        assertThat(findings)
                .filteredOn(finding -> finding.id().equals("sight.height"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.MUST_FIX);
                    assertThat(finding.message())
                            .isEqualTo(
                                    "R1 stands 5' 2\" high in the sight triangle at the corner of Elm and Fourth, from station 1-3/16\" to 14' 0\"; at most 3' 0\" there.");
                });
        assertThat(severities(
                        with(
                                "\"sights\": [ { \"what\": \"drive\", \"east\": \"50'\", \"north\": \"-1'\", \"first\": \"90 deg\", \"firstLeg\": \"20'\","
                                        + " \"second\": \"0 deg\", \"secondLeg\": \"20'\" } ],",
                                ""),
                        "sight.height"))
                .containsExactly(Severity.PASS);
    }

    @Test
    void anAccessibleWayIsMeasuredAndAsked() throws IOException {
        List<Finding> findings = with("\"accessible\": [ { \"gate\": \"G1\", \"smoothBottom\": \"no\" } ],", "");
        assertThat(severities(findings, "access.width")).containsExactly(Severity.PASS);
        assertThat(severities(findings, "access.hardware")).containsExactly(Severity.MUST_FIX);
        assertThat(severities(findings, "access.bottom")).containsExactly(Severity.MUST_FIX);
        assertThat(severities(findings, "access.threshold")).containsExactly(Severity.CANNOT_SAY);
    }

    @Test
    void woodByAHouse() throws IOException {
        String house =
                "\"buildings\": [ { \"what\": \"house\", \"corners\": [ { \"east\": \"10'\", \"north\": \"4'\" }, { \"east\": \"30'\", \"north\": \"4'\" } ] } ]";
        assertThat(severities(with("\"nearHouse\": { " + house + " },", ""), "house.strip"))
                .containsExactly(Severity.CAUTION);
        assertThat(severities(with("\"nearHouse\": { \"required\": true, " + house + " },", ""), "house.strip"))
                .containsExactly(Severity.MUST_FIX);
        assertThat(severities(with("\"nearHouse\": { \"strip\": \"3' 11\\\"\", " + house + " },", ""), "house.strip"))
                .isEmpty();
    }

    @Test
    void digDaysLieInsideATicketOrAreAMustFix() throws IOException {
        String ticket =
                "\"tickets\": [ { \"number\": \"A-1\", \"digFrom\": \"2027-04-26\", \"validThrough\": \"%s\" } ]";
        assertThat(severities(with("", ticket.replace("%s", "2027-06-30")), "dig.window"))
                .containsExactly(Severity.PASS);
        String weekend = ticket.replace("04-26", "04-24").replace("%s", "2027-04-25");
        assertThat(severities(with("", weekend), "dig.window")).containsExactly(Severity.MUST_FIX);
    }

    /** Gas was marked on a ticket of its own, which ends before the crew comes; another ticket covers the days. */
    @Test
    void aUtilityMarkedOnATicketThatRanOutIsAMustFix() throws IOException {
        String tickets =
                "\"tickets\": [ { \"number\": \"A-1\", \"digFrom\": \"2027-04-26\", \"validThrough\": \"2027-06-30\" },"
                        + " { \"number\": \"G-7\", \"digFrom\": \"2027-04-10\", \"validThrough\": \"%s\" } ]";
        String gas =
                "\"style\": \"wood-side-by-side\", \"noDig\": [ { \"from\": \"29'\", \"to\": \"31'\", \"why\": \"gas main\", \"ticket\": \"G-7\" } ]";
        assertThat(windows(tickets.replace("%s", "2027-06-30"), gas)).containsExactly("PASS site");
        assertThat(windows(tickets.replace("%s", "2027-04-20"), gas)).containsExactly("MUST_FIX R1", "PASS site");
    }

    private static List<String> windows(String tickets, String run) throws IOException {
        String yard = PoolYard.text()
                .replace("\"rules\": {", "\"existing\": { " + tickets + " }, \"rules\": {")
                .replace("\"uses\": [\"pool\"]", "\"uses\": [\"walk\"]")
                .replaceFirst("\"style\": \"[a-z-]+\"", run);
        return PoolYard.findings(yard).stream()
                .filter(finding -> finding.id().equals("dig.window"))
                .map(finding -> finding.severity() + " " + finding.part())
                .toList();
    }

    /** The lot line lies 6 in. south of the post centers; the face of a 2.375 in. post is 4-13/16 in. off it, gate posts of 2.875 in. 4-9/16 in. */
    @Test
    void aFenceKeepsOffTheLotLine() throws IOException {
        String line =
                "\"propertyLines\": [ { \"what\": \"south lot line\", %s \"setback\": \"%s\", \"points\": [ { \"east\": \"-9'\", \"north\": \"-6\\\"\" },"
                        + " { \"east\": \"60'\", \"north\": \"-6\\\"\" } ] } ],";
        List<Finding> kept =
                with(line.replaceFirst("%s", "\"certifiedBy\": \"pins\",").replace("%s", "4\\\""), "");
        assertThat(severities(kept, "line.setback")).containsExactly(Severity.PASS);
        assertThat(severities(kept, "line.certified")).containsExactly(Severity.PASS);
        List<Finding> broken = with(line.replaceFirst("%s", "").replace("%s", "5\\\""), "");
        assertThat(severities(broken, "line.setback")).containsExactly(Severity.MUST_FIX);
        assertThat(severities(broken, "line.certified")).containsExactly(Severity.CANNOT_SAY);
    }

    private static String message(String points) throws IOException {
        String line =
                "\"propertyLines\": [ { \"what\": \"lot line\", \"certifiedBy\": \"pins\", \"setback\": \"4\\\"\","
                        + " \"points\": [ " + points + " ] } ],";
        return with(line, "").stream()
                .filter(each -> each.id().equals("line.setback"))
                .map(each -> each.severity() + " " + each.message())
                .findFirst()
                .orElse("");
    }

    /** The yard lies north of the fence: a lot line 3 ft north of it leaves the fence on the neighbor's land, however far off; one across it is gone over. */
    @Test
    void aFenceBeyondTheLotLineOrOverItIsAMustFix() throws IOException {
        assertThat(message("{ \"east\": \"-9'\", \"north\": \"3'\" }, { \"east\": \"50'\", \"north\": \"3'\" }"))
                .startsWith("MUST_FIX R1 stands beyond the lot line, ");
        assertThat(message("{ \"east\": \"20'\", \"north\": \"-9'\" }, { \"east\": \"20'\", \"north\": \"9'\" }"))
                .startsWith("MUST_FIX R1 goes over the lot line");
        assertThat(message("{ \"east\": \"-9'\", \"north\": \"0'\" }, { \"east\": \"50'\", \"north\": \"0'\" }"))
                .as("a fence along the line is held to its set-back")
                .doesNotContain("goes over", "beyond");
        assertThat(message("{ \"east\": \"-9'\", \"north\": \"-3'\" }, { \"east\": \"50'\", \"north\": \"-3'\" }"))
                .startsWith("PASS ");
        assertThat(message("{ \"east\": \"-9'\", \"north\": \"-3'\" }, { \"east\": \"44'\", \"north\": \"-3'\" },"
                        + " { \"east\": \"45'\", \"north\": \"4'\" }, { \"east\": \"60'\", \"north\": \"4'\" }"))
                .as("a lot line that jogs into the yard beyond the end of the fence")
                .startsWith("PASS ");
    }

    /** The fence turns a corner on the line itself, or the line does on the fence; nothing of either is crossed between its ends. */
    @Test
    void aFenceThatGoesOverTheLineAtACornerIsAMustFix() throws IOException {
        assertThat(
                        message(
                                "{ \"east\": \"-9'\", \"north\": \"-9'\" }, { \"east\": \"20'\", \"north\": \"0'\" }, { \"east\": \"50'\", \"north\": \"9'\" }"))
                .startsWith("MUST_FIX R1 goes over the lot line");
        assertThat(
                        message(
                                "{ \"east\": \"-9'\", \"north\": \"-9'\" }, { \"east\": \"20'\", \"north\": \"0'\" }, { \"east\": \"50'\", \"north\": \"-9'\" }"))
                .as("a line that only touches the fence with its corner")
                .doesNotContain("goes over");
    }

    @Test
    void postsOnTheLineWhereNoSetBackIsAskedAreTheNeighborsToo() throws IOException {
        String line =
                "\"propertyLines\": [ { \"what\": \"lot line\", \"certifiedBy\": \"pins\", \"setback\": \"0\\\"\","
                        + " \"points\": [ { \"east\": \"-9'\", \"north\": \"%s\" }, { \"east\": \"50'\", \"north\": \"%s\" } ] } ],";
        assertThat(with(line.replace("%s", "0'"), ""))
                .filteredOn(each -> each.id().equals("line.setback"))
                .singleElement()
                .satisfies(each -> {
                    assertThat(each.severity()).isEqualTo(Severity.CAUTION);
                    // Half of a gate post of 2-7/8 in.
                    assertThat(each.message())
                            .startsWith("R1 stands on the lot line: its posts reach 1-7/16\" over it");
                });
        assertThat(severities(with(line.replace("%s", "-2\\\""), ""), "line.setback"))
                .containsExactly(Severity.PASS);
    }

    @Test
    void shutAtNight() throws IOException {
        assertThat(severities(with("\"overnight\": [ { \"what\": \"a dog\" } ],", ""), "contain.overnight"))
                .containsExactly(Severity.CANNOT_SAY);
        assertThat(severities(
                        with("\"overnight\": [ { \"what\": \"a dog\", \"temporaryFence\": \"30'\" } ],", ""),
                        "contain.overnight"))
                .containsExactly(Severity.CAUTION);
    }
}
