package plumbleaf.reference.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Fit;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.quantity.Length;

/**
 * A mixed fit on ground whose grades are known: panels that rack 1 in 5 follow 10 % and step 30 %, each whole line of sight one way; lying boards step by a board
 * and its gap; a block wall's fence by its course.
 *
 * Source: plane geometry; the panel's rack limit of 1 in 5 from the styles that come with the program.
 * Tolerance: 1e-6 in.
 */
class MixedFitCheck {
    private static LaidOut yard(String style, String more) {
        String shots = "{ \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0'\" },"
                + "{ \"id\": \"S2\", \"run\": \"R1\", \"station\": \"40'\", \"elevation\": \"4'\" },"
                + "{ \"id\": \"S3\", \"run\": \"R1\", \"station\": \"80'\", \"elevation\": \"16'\" }";
        return LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"rules\": { \"gap\": { \"largest\": \"23\\\"\" }"
                        + " }, \"ground\": { \"shots\": [" + shots
                        + "] }, \"runs\": [ { \"id\": \"R1\", \"legs\": [ { \"length\": \"40'\" }, { \"length\":"
                        + " \"40'\", \"turn\": \"90 deg left\" } ], \"style\": \""
                        + style + "\", \"infill\": \"6'\", \"bottomGap\": \"2\\\"\"" + more + " } ] }");
    }

    private static List<Finding> findings(LaidOut laid, String id) {
        return laid.layout().findings().stream()
                .filter(each -> each.id().equals(id))
                .toList();
    }

    @Test
    void panelsRackWhereTheyCanAndStepWhereTheyCannot() {
        LaidOut laid = yard("metal-panel", ", \"fit\": \"mixed\"");
        for (Bay bay : laid.layout().bays())
            assertThat(bay.fit()).isEqualTo(bay.start().inches() < 480 - 1e-6 ? Fit.RACKED : Fit.STEPPED);
        assertThat(findings(laid, "line.mixed"))
                .extracting(Finding::message)
                .containsExactly(
                        "From station 0\" to 40' 0\" R1 is racked: its steepest bay is 10 %; its panels and brackets"
                                + " take 20 %.",
                        "From station 40' 0\" to 80' 0\" R1 is stepped: its steepest bay is 30 %; its panels and"
                                + " brackets take 20 %.");
        assertThat(findings(laid, "line.fit-changes"))
                .singleElement()
                .satisfies(change -> assertThat(change.severity()).isEqualTo(Severity.PASS));
    }

    /** A bend 4 in. under the chord of a bay that falls 28 in.: no fair line keeps 4 in., a step hangs over 2 ft off the ground, the chord 2 in. too far. */
    @Test
    void stepsAreNoCureWhereTheyMissTheGapByMore() {
        LaidOut laid = LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"rules\": { \"gap\": { \"largest\": \"4\\\"\" } },"
                        + " \"ground\": { \"shots\": [ { \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0'\" },"
                        + " { \"id\": \"S2\", \"run\": \"R1\", \"station\": \"4'\", \"elevation\": \"-18\\\"\" },"
                        + " { \"id\": \"S3\", \"run\": \"R1\", \"station\": \"16'\", \"elevation\": \"-48\\\"\" } ] },"
                        + " \"runs\": [ { \"id\": \"R1\", \"legs\": [ { \"length\": \"16'\" } ], \"style\": \"wood-side-by-side\","
                        + " \"infill\": \"6'\", \"bottomGap\": \"2\\\"\", \"fit\": \"mixed\", \"maxBay\": \"9'\" } ] }");
        assertThat(laid.layout().bays()).allSatisfy(bay -> assertThat(bay.fit()).isEqualTo(Fit.RACKED));
        double most = laid.layout().bays().stream()
                .mapToDouble(bay -> bay.groundGapMax().inches())
                .max()
                .orElseThrow();
        assertThat(findings(laid, "line.mixed"))
                .singleElement()
                .satisfies(settled -> assertThat(settled.message())
                        .contains(
                                "is racked: no fair line, with bends at its posts alone, keeps the gap to the ground; steps miss it by ")
                        .endsWith("bays on the ground's own chords miss it by "
                                + laid.job().display().length(Length.inches(most - 4)) + "."));
    }

    /** Boards have no limit of their own: even grades are racked throughout. */
    @Test
    void boardsFollowEvenGround() {
        LaidOut laid = yard("wood-side-by-side", ", \"fit\": \"mixed\"");
        assertThat(laid.layout().bays()).allSatisfy(bay -> assertThat(bay.fit()).isEqualTo(Fit.RACKED));
    }

    /** No whole number of 5-1/2 in. boards fills 6 ft within the style's gaps, so they lie at its 1/4 in. with the top one ripped: steps are multiples of 5-3/4 in. */
    @Test
    void lyingBoardsStepByABoardAndItsGap() {
        LaidOut laid = yard("wood-horizontal", ", \"fit\": \"stepped\"");
        double pitch = 5.75;
        int steps = 0;
        for (Bay bay : laid.layout().bays()) {
            double times = bay.step().inches() / pitch;
            assertThat(times).isCloseTo(Math.rint(times), within(1e-6));
            assertThat(bay.groundGapMin().inches()).isGreaterThanOrEqualTo(2 - 1e-6);
            if (!bay.step().isZero()) steps++;
        }
        assertThat(steps).isGreaterThan(5);
        assertThat(findings(laid, "line.steps")).hasSize(1);
    }

    @Test
    void aWallsFenceStepsByItsCourse() {
        LaidOut laid = yard("wood-side-by-side", ", \"fit\": \"stepped\", \"step\": \"8\\\"\"");
        for (Bay bay : laid.layout().bays())
            assertThat(Math.IEEEremainder(bay.step().inches(), 8)).isCloseTo(0, within(1e-6));
        assertThat(findings(laid, "line.steps").get(0).message())
                .contains("in whole multiples of 8\" (the job's own step)");
    }

    /** A hollow 5 in. under its chord in the middle of a bay: a large dog's 4 in. cannot be kept racked without digging in, a gap of 9 in. can. */
    @Test
    void whatAFenceKeepsHoldsItsGap() {
        LaidOut open = kept("");
        LaidOut dog = kept(", \"keeps\": [ { \"what\": \"small-dog\", \"runs\": [ \"R1\" ] } ]");
        assertThat(findings(open, "line.keeps")).isEmpty();
        Finding held = findings(dog, "line.keeps").get(0);
        assertThat(held.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(held.message()).contains("to keep a small dog it may be 2\"");
    }

    private static LaidOut kept(String keeps) {
        return LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"rules\": { \"gap\": { \"largest\": \"9\\\"\" }"
                        + keeps
                        + " }, \"ground\": { \"shots\": [ { \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\","
                        + " \"elevation\": \"0'\" },{ \"id\": \"S2\", \"run\": \"R1\", \"station\": \"4'\","
                        + " \"elevation\": \"-5\\\"\" }, { \"id\": \"S3\", \"run\": \"R1\", \"station\": \"8'\","
                        + " \"elevation\": \"0'\" } ] },\"runs\": [ { \"id\": \"R1\", \"legs\": [ { \"length\": \"8'\""
                        + " } ], \"style\": \"wood-side-by-side\", \"infill\": \"6'\", \"bottomGap\": \"2\\\"\" } ]"
                        + " }");
    }
}
