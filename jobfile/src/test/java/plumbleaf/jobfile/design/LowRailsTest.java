package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.RailPiece;

/** Under a level top the ground falls 3 ft: there the boards hang 43 in. below their lowest rail, which is a long lever for a board 5/8 in. thick. */
class LowRailsTest {
    private static Design designed(String fit, String rails) {
        return Yard.ofBoards(
                        "engineered",
                        "\"speed\": \"105 mph\", \"exposure\": \"B\"",
                        new int[][] {{0, 0}, {40, 0}, {48, -36}, {96, -36}},
                        "\"legs\": [ { \"length\": \"96'\" } ], \"infill\": \"6'\", \"bottomGap\": \"2\\\"\", \"fit\": \""
                                + fit + "\"" + rails,
                        "\"post\": \"F1083-REG-2.5\"")
                .design();
    }

    private static final String MORE = ", \"lowRails\": true";

    private static Bay last(Design design) {
        List<Bay> bays = design.layout().bays();
        return bays.get(bays.size() - 1);
    }

    private static double lowestIn(Bay bay) {
        return bay.rails().stream()
                .map(RailPiece::from)
                .mapToDouble(from -> from.inches() - bay.bottomFrom().inches())
                .min()
                .orElseThrow();
    }

    @Test
    void boardsThatHangFarBelowTheirRailsAreALever() {
        Design design = designed("level-top", "");
        Finding lever = Yard.findings(design, "picket.lever").get(0);
        assertThat(lever.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(lever.message()).contains("hang 3' 7\" below their lowest rail");
        assertThat(lowestIn(last(design))).isCloseTo(43, within(0.01));
        assertThat(Yard.findings(designed("racked", ""), "picket.lever")).isEmpty();
    }

    @Test
    void moreRailsUnderTheLowestHoldThemAndCostWhatTheRemedySaid() {
        Design now = designed("level-top", "");
        Remedy more = Yard.findings(now, "picket.lever").get(0).remedies().get(0);
        assertThat(more.edit()).contains("runs[R1].lowRails=true");
        Design then = designed("level-top", MORE);
        Finding lever = Yard.findings(then, "picket.lever").get(0);
        assertThat(lever.severity()).isEqualTo(Severity.PASS);
        assertThat(lever.measure().orElseThrow().ratio().orElseThrow())
                .isCloseTo(more.ratio().orElseThrow(), within(0.01));
        assertThat(then.quote().price().total().minus(now.quote().price().total()))
                .isEqualTo(more.priceChange().orElseThrow());
        assertThat(Yard.findings(then, "rail.wind")).allMatch(finding -> finding.severity() == Severity.PASS);
    }

    /** As near the ground as the lowest rail lies elsewhere, 7 in. over the boards' ends, and no farther apart than the rails above. */
    @Test
    void theyLieAtTheSpacingOfTheRailsAboveDownToTheEdge() {
        Bay bay = last(designed("level-top", MORE));
        assertThat(bay.rails()).hasSize(5);
        assertThat(lowestIn(bay)).isCloseTo(7, within(0.01));
        for (int i = 1; i < 5; i++)
            assertThat(bay.rails()
                            .get(i)
                            .from()
                            .minus(bay.rails().get(i - 1).from())
                            .inches())
                    .isBetween(12.0, 29.01);
        assertThat(designed("level-top", MORE).layout().bays().get(0).rails()).hasSize(3);
        assertThat(designed("racked", MORE).layout())
                .isEqualTo(designed("racked", "").layout());
    }
}
