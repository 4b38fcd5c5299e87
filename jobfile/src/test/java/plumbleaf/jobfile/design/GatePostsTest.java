package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.sag.CaseForces;
import plumbleaf.engine.sag.HingeForce;

class GatePostsTest {
    private static final Design NURSERY = Yard.nursery().design();

    private static Finding only(Design design, String id) {
        assertThat(Yard.findings(design, id)).hasSize(1);
        return Yard.findings(design, id).get(0);
    }

    private static double ratio(Finding finding) {
        return finding.measure().orElseThrow().ratio().orElseThrow();
    }

    @Test
    void theWallOfTheHingePostIsPulledByItsTopHinge() {
        GateDesign gate = Yard.gate(NURSERY);
        HungLeaf hung = gate.hung().get(0);
        double pull = 0;
        for (CaseForces each : hung.cases()) {
            HingeForce top = each.hinges().get(1);
            pull = Math.max(
                    pull,
                    StrictMath.hypot(top.horizontal().pounds(), top.across().pounds()));
        }
        Finding wall = only(NURSERY, "post.wall");
        assertThat(wall.part()).isEqualTo(gate.hingePost());
        assertThat(wall.measure().orElseThrow().measured()).isCloseTo(pull, within(1e-9));
        assertThat(gate.loadPath()).anySatisfy(link -> {
            assertThat(link.link()).isEqualTo("hinge post wall");
            assertThat(link.utilisation()).isCloseTo(ratio(wall), within(1e-9));
        });
        assertThat(gate.loadPath())
                .extracting(LinkUse::utilisation)
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void aThickerPostTakesMoreOfAPullOnItsWall() {
        Design thick = Yard.nursery()
                .with("\"hingePost\": \"F1083-REG-2.5\"", "\"hingePost\": \"F1083-REG-4\"")
                .design();
        assertThat(ratio(only(thick, "post.wall"))).isLessThan(ratio(only(NURSERY, "post.wall")));
    }

    /** Twice the speed gives twice the blow; the cures are offered once it is too much. */
    @Test
    void aSlamGrowsWithTheSpeedOfTheLeaf() {
        String person = "\"person\": \"200 lb\",";
        Finding hand = only(NURSERY, "gate.slam");
        Finding twice = only(
                Yard.nursery()
                        .with(person, person + " \"slamSpeed\": \"4 mph\",")
                        .design(),
                "gate.slam");
        Finding gust = only(
                Yard.nursery()
                        .with(person, person + " \"slamSpeed\": \"12 mph\",")
                        .design(),
                "gate.slam");
        assertThat(ratio(twice)).isCloseTo(2 * ratio(hand), within(1e-9));
        assertThat(gust.severity()).isEqualTo(Severity.CAUTION);
        assertThat(gust.remedies()).extracting(Remedy::id).containsExactly("hold-back", "closer");
    }

    @Test
    void whatAPersonLeavesBehindFitsTheLatchOrItSaysSo() {
        HungLeaf hung = Yard.gate(NURSERY).hung().get(0);
        Finding live = only(NURSERY, "sag.live");
        assertThat(live.measure().orElseThrow().measured())
                .isEqualTo(hung.sag().byTime().afterHanging().residual().inches());
        assertThat(live.measure().orElseThrow().limit())
                .isEqualTo(hung.limits().latch().inches());
        Finding heavy = only(
                Yard.nursery()
                        .with("\"person\": \"200 lb\"", "\"person\": \"1000 lb\"")
                        .design(),
                "sag.live");
        assertThat(ratio(heavy)).isCloseTo(5 * ratio(live), within(1e-9));
    }

    @Test
    void theServiceGustIsHeldToHeightAndReach() {
        HungLeaf hung = Yard.gate(NURSERY).hung().get(0);
        Finding gust = only(NURSERY, "sag.gust");
        double down = Math.abs(hung.sag().gust().down().inches())
                / hung.limits().latch().inches();
        double out = -hung.sag().gust().away().inches() / hung.limits().bite().inches();
        assertThat(ratio(gust)).isCloseTo(Math.max(down, out), within(1e-9));
    }
}
