package plumbleaf.reference.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.geometry.PlanPoint;

/**
 * A point by two tapes: 30 and 50 ft from the ends of 40 ft lie square to one end; a third tape from the far corner of that rectangle reads 40. A leg taped along the
 * ground is shortened by what the shots say, and where nobody said how the tape lay the question is put.
 *
 * Source: Euclid, Elements I.47 (3-4-5) and I.22 (no triangle of 10, 20 and 40); L = sqrt(S2 - dz2), by hand: 100 ft on a 20 % grade are 98.06 ft.
 * Tolerance: 1e-6 in.; the hand calculation 0.01 ft.
 */
class TapedPointCheck {
    private static LaidOut taped(String tapes) {
        return LaidOut.of(
                "{ \"format\": \"plumbleaf-job\", \"version\": 1, \"ground\": { \"shots\": ["
                        + "{ \"id\": \"S9\", \"tapes\": " + tapes + ", \"elevation\": \"5\\\"\" },"
                        + "{ \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\", \"elevation\": \"0\\\"\" },"
                        + "{ \"id\": \"S2\", \"run\": \"R1\", \"station\": \"40'\", \"elevation\": \"0\\\"\" },"
                        + "{ \"id\": \"S3\", \"east\": \"40'\", \"north\": \"30'\", \"elevation\": \"4\\\"\" },"
                        + "{ \"id\": \"S8\", \"tapes\": { \"from\": \"S9\", \"length\": \"30'\", \"and\": \"S2\", \"andLength\": \"40'\", \"side\": \"left\" },"
                        + " \"elevation\": \"5\\\"\" } ] },"
                        + "\"runs\": [ { \"id\": \"R1\", \"legs\": [ { \"length\": \"40'\" } ], \"style\": \"wood-side-by-side\" } ] }");
    }

    private static String tapes(String first, String second, String side, String third) {
        return "{ \"from\": \"S1\", \"length\": \"" + first + "\", \"and\": \"S2\", \"andLength\": \"" + second
                + "\", \"side\": \"" + side + "\""
                + (third.isEmpty() ? "" : ", \"check\": \"S3\", \"checkLength\": \"" + third + "\"") + " }";
    }

    private static PlanPoint place(LaidOut laid, String shot) {
        return laid.ground().point(shot).orElseThrow().point().plan();
    }

    private static Finding finding(LaidOut laid, String id, String part) {
        return laid.ground().findings().stream()
                .filter(each -> each.id().equals(id) && each.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void twoTapesMeetOnTheSideThatWasSaid() {
        LaidOut left = taped(tapes("30'", "50'", "left", "40'"));
        assertThat(place(left, "S9").xIn()).isCloseTo(0, within(1e-6));
        assertThat(place(left, "S9").yIn()).isCloseTo(360, within(1e-6));
        assertThat(finding(left, "ground.tapes", "S9").severity()).isEqualTo(Severity.PASS);
        assertThat(finding(left, "ground.third-tape", "S9").severity()).isEqualTo(Severity.PASS);
        LaidOut right = taped(tapes("30'", "50'", "right", ""));
        assertThat(place(right, "S9").yIn()).isCloseTo(-360, within(1e-6));
        assertThat(finding(right, "ground.tapes", "S9").message()).contains("no third tape checks it");
    }

    /** S8 lies 30 ft from S9 (0, 30) and 40 ft from S2 (40, 0), left of the way from one to the other: the known points are 50 ft apart, so the tapes meet square. */
    @Test
    void aPointMayBeTapedFromATapedPoint() {
        LaidOut laid = taped(tapes("30'", "50'", "left", ""));
        PlanPoint at = place(laid, "S8");
        assertThat(at.distanceTo(place(laid, "S9")).inches()).isCloseTo(360, within(1e-6));
        assertThat(at.distanceTo(place(laid, "S2")).inches()).isCloseTo(480, within(1e-6));
        assertThat(at.xIn() / 40 + at.yIn() / 30).isGreaterThan(12);
    }

    @Test
    void aThirdTapeSaysHowFarTheyClose() {
        Finding off = finding(taped(tapes("30'", "50'", "left", "40.5'")), "ground.third-tape", "S9");
        assertThat(off.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(off.message()).contains("the other two make it 40' 0\", 6\" off");
    }

    @Test
    void tapesThatDoNotMeetAreTold() {
        Finding lacks = finding(taped(tapes("10'", "20'", "left", "")), "ground.tapes", "S9");
        assertThat(lacks.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(lacks.message()).contains("lack 10' 0\" to meet");
    }

    private static LaidOut sloping(String taped) {
        return LaidOut.run("{ \"length\": \"100'\"" + taped + " }", "", 0, 0, 90, -216);
    }

    private static Finding tape(LaidOut laid) {
        return laid.layout().findings().stream()
                .filter(each -> each.id().equals("line.tape"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTapeAlongTheGroundIsReckonedLevelOrAskedFor() {
        LaidOut unsaid = sloping("");
        assertThat(tape(unsaid).severity()).isEqualTo(Severity.CAUTION);
        assertThat(tape(unsaid).message()).contains("Nobody said").contains("98' 11/16\" in plan, 1' 11-5/16\" less");
        assertThat(tape(unsaid).remedies()).hasSize(2);
        LaidOut slope = sloping(", \"taped\": \"slope\"");
        double level = slope.layout().runs().get(0).line().line().length().inFeet();
        assertThat(level).isCloseTo(98.06, within(0.01));
        assertThat(tape(slope).severity()).isEqualTo(Severity.PASS);
        LaidOut said = sloping(", \"taped\": \"level\"");
        assertThat(said.layout().findings()).noneMatch(each -> each.id().equals("line.tape"));
        assertThat(LaidOut.run("{ \"length\": \"100'\" }", "", 0, 0, 90, -6)
                        .layout()
                        .findings())
                .noneMatch(each -> each.id().equals("line.tape"));
    }
}
