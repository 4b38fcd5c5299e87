package plumbleaf.reference.rule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.GuardLoad;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Guarded;
import plumbleaf.engine.job.RunStretch;
import plumbleaf.engine.quantity.Length;

/**
 * A guard post 42 in. high, posts 6 ft apart (CX30): 200 lb make 8,400 lb-in at its foot at a dwelling, 50 plf on 6 ft make 12,600 elsewhere; and a fence on a wall
 * is held to height, openings, rail and posts.
 *
 * Source: ASCE 7-16 4.5.1; IBC 1607.8.1 with exception 1.
 * Tolerance: exact.
 */
class GuardPostCheck {
    private static double momentLbIn(boolean dwelling) {
        Guarded guard = new Guarded(new RunStretch("R1", Length.ZERO, Length.feet(40)), Length.inches(48), dwelling);
        return GuardLoad.on(guard, Length.feet(6)).pounds() * 42;
    }

    @Test
    void theGoverningLoadIsTheGreater() {
        assertThat(momentLbIn(true)).isCloseTo(8400, within(1e-9));
        assertThat(momentLbIn(false)).isCloseTo(12600, within(1e-9));
    }

    private static List<Finding> on(String rules, String run) {
        return on(rules, "wood-side-by-side", run);
    }

    private static List<Finding> on(String rules, String style, String run) {
        return PoolYard.findings("{ \"format\": \"plumbleaf-job\", \"version\": 1, \"rules\": { " + rules
                + " }, \"ground\": { \"shots\": [ { \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\","
                + " \"elevation\": \"0'\" },{ \"id\": \"S2\", \"run\": \"R1\", \"station\": \"24'\", \"elevation\":"
                + " \"0'\" } ] },\"runs\": [ { \"id\": \"R1\", \"legs\": [ { \"length\": \"24'\" } ], \"maxBay\":"
                + " \"6'\", \"style\": \""
                + style + "\", " + run + " } ] }");
    }

    private static Finding finding(List<Finding> all, String id) {
        return all.stream().filter(each -> each.id().equals(id)).findFirst().orElseThrow();
    }

    private static String guard(String drop) {
        return "\"guards\": [ { \"run\": \"R1\", \"from\": \"0'\", \"to\": \"24'\", \"drop\": \"" + drop + "\" } ]";
    }

    @Test
    void aFenceOnAWallIsHeldToTheClausesOfAGuard() {
        List<Finding> tall = on(guard("4'"), "metal-panel", "\"infill\": \"5'\", \"basis\": \"engineered\"");
        assertThat(finding(tall, "guard.height").severity()).isEqualTo(Severity.PASS);
        assertThat(finding(tall, "guard.sphere").severity()).isEqualTo(Severity.PASS);
        assertThat(finding(tall, "guard.rail").severity()).isEqualTo(Severity.PASS);
        assertThat(finding(tall, "guard.wall").severity()).isEqualTo(Severity.CANNOT_SAY);
        assertThat(finding(tall, "guard.wall").message()).contains("must take 300 lb and 1550 lb-ft");
        assertThat(tall).noneSatisfy(each -> assertThat(each.id()).isEqualTo("guard.basis"));
        List<Finding> low = on(guard("4'"), "\"infill\": \"3'\"");
        assertThat(finding(low, "guard.rail").severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(finding(low, "guard.height").severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(finding(low, "guard.basis").severity()).isEqualTo(Severity.MUST_FIX);
    }

    @Test
    void theLoadOfPeopleIsAmongThoseOfThePosts() {
        double plain = strength(on("", "\"infill\": \"4'\""));
        double guarded = strength(on(guard("4'"), "\"infill\": \"4'\""));
        assertThat(plain).isLessThan(0.1);
        assertThat(guarded).isGreaterThan(0.5);
    }

    private static double strength(List<Finding> all) {
        return all.stream()
                .filter(each -> each.id().equals("post.strength"))
                .mapToDouble(each -> each.measure().orElseThrow().ratio().orElse(0))
                .max()
                .orElseThrow();
    }

    @Test
    void besideALowDropNoGuardIsAsked() {
        List<Finding> low = on(guard("30\\\""), "\"infill\": \"4'\"");
        assertThat(finding(low, "guard.drop").severity()).isEqualTo(Severity.PASS);
        assertThat(low).noneSatisfy(each -> assertThat(each.id()).isEqualTo("guard.height"));
    }

    private static List<Finding> gated(String infill, String gap) {
        return PoolYard.findings("{ \"format\": \"plumbleaf-job\", \"version\": 1, \"rules\": { " + guard("4'")
                + " }, \"ground\": { \"shots\": [ { \"id\": \"S1\", \"run\": \"R1\", \"station\": \"0'\","
                + " \"elevation\": \"0'\" },{ \"id\": \"S2\", \"run\": \"R1\", \"station\": \"24'\", \"elevation\":"
                + " \"0'\" } ] },\"runs\": [ { \"id\": \"R1\", \"legs\": [ { \"length\": \"24'\" } ], \"maxBay\":"
                + " \"6'\", \"style\": \"wood-side-by-side\", \"infill\": \"" + infill
                + "\", \"basis\": \"engineered\" } ], \"gates\": [ { \"id\": \"G1\", \"kind\": \"swing\", \"run\": \"R1\", \"station\": \"10'\","
                + " \"opening\": \"4'\", \"hinge\": \"left\", \"swing\": \"in\", \"leaf\": { \"infill\": \"" + infill
                + "\", \"bottomGap\": \"" + gap
                + "\" } } ], \"builds\": { \"G1\": { \"frame\": \"TUBE-2x2x0.083\", \"braces\": 1, \"hingePost\": \"F1083-REG-2.5\","
                + " \"hole\": \"12\\\"\", \"depth\": \"36\\\"\" } } }");
    }

    private static Finding of(List<Finding> all, String id, String part) {
        return all.stream()
                .filter(each -> each.id().equals(id) && each.part().equals(part))
                .findFirst()
                .orElseThrow();
    }

    /** Its leaf is measured as the fence is, and people lean on it: a 4 ft leaf 3 in. off the ground passes, one of 3 ft 5 in. off does not. */
    @Test
    void aGateInAGuardIsAGuard() {
        List<Finding> high = gated("4'", "3\\\"");
        assertThat(of(high, "guard.height", "G1a").severity()).isEqualTo(Severity.PASS);
        assertThat(of(high, "guard.sphere", "G1a").severity()).isEqualTo(Severity.PASS);
        assertThat(of(high, "guard.rail", "G1a").measure().orElseThrow().ratio().orElseThrow())
                .isPositive();
        assertThat(high).anySatisfy(each -> assertThat(each.id()).isEqualTo("guard.latch"));
        List<Finding> low = gated("3'", "5\\\"");
        assertThat(of(low, "guard.height", "G1a").severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(of(low, "guard.sphere", "G1a").severity()).isEqualTo(Severity.MUST_FIX);
    }
}
