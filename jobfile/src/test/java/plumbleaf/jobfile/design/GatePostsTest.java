package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.takeoff.BoltItem;
import plumbleaf.engine.takeoff.TakeoffLine;

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
    void everyJointBetweenLeafAndPostIsALinkOfTheChain() {
        GateDesign gate = Yard.gate(NURSERY);
        assertThat(gate.loadPath())
                .extracting(LinkUse::link)
                .contains(
                        "leaf frame",
                        "frame weld",
                        "bolts to leaf",
                        "hinge",
                        "weld to post",
                        "hinge post wall",
                        "hinge post",
                        "hinge post footing",
                        "latch");
        assertThat(gate.loadPath())
                .extracting(LinkUse::utilisation)
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(gate.loadPath()).allSatisfy(link -> {
            assertThat(link.inCase()).isNotBlank();
            assertThat(link.work().formula()).isNotBlank();
            assertThat(link.work().numbers()).isNotBlank();
            assertThat(link.work().clause()).isNotBlank();
        });
        double wall = gate.loadPath().stream()
                .filter(link -> link.link().equals("hinge post wall"))
                .mapToDouble(LinkUse::utilisation)
                .max()
                .orElseThrow();
        assertThat(ratio(only(NURSERY, "post.wall"))).isCloseTo(wall, within(1e-9));
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

    /** Plate 1/4 and tube 2: 2.25 + 0.218 + 0.4375 + 0.154 = 3.06, so 3-1/2; nailers 2 + 1-1/2 + 0.166 + 0.328 + 0.125 = 4.12, so 4-1/2. */
    @Test
    void boltsAreOrderedByTheirStackUp() {
        GateDesign gate = Yard.gate(NURSERY);
        List<BoltItem> bolts = BoltItem.of(gate.plan().leaves().get(0), gate.parts());
        assertThat(bolts).extracting(BoltItem::item).containsExactly("bolt-0.5x3.5", "bolt-0.375x4.5");
        assertThat(bolts.get(0).count()).isEqualTo(4);
        assertThat(bolts.get(0).sleeve().orElseThrow().inches()).isEqualTo(1.96875);
        assertThat(NURSERY.quote().takeoff().lines())
                .extracting(TakeoffLine::item)
                .contains("bolt-0.5x3.5", "cap-nut-0.5", "washer-0.5", "sleeve-0.5");
        assertThat(NURSERY.findings()).noneMatch(finding -> finding.message().contains("has no price"));
    }

    @Test
    void aLeafThatNothingHoldsIsSlammedByAGust() {
        assertThat(NURSERY.findings()).noneMatch(finding -> finding.id().equals("gate.gust-slam"));
        Design free = Yard.nursery()
                .with("\"holdOpen\": \"cane-bolt\"", "\"holdOpen\": \"free\"")
                .design();
        Finding gust = only(free, "gate.gust-slam");
        assertThat(ratio(gust)).isGreaterThan(3 * ratio(only(free, "gate.slam")));
        Remedy held = gust.remedies().get(0);
        assertThat(held.edit()).contains("gates[G1].holdOpen=cane-bolt");
        assertThat(held.priceChange())
                .contains(NURSERY.quote()
                        .price()
                        .total()
                        .minus(free.quote().price().total()));
    }

    /** It closes by itself or the barrier is open: a hold-back is no cure there. */
    @Test
    void aGateOfAPoolIsNotHeldBackFromSlamming() {
        Design pool = Yard.nursery()
                .with("\"holdOpen\": \"cane-bolt\"", "\"holdOpen\": \"free\"")
                .with("\"uses\": [\"walk\"]", "\"uses\": [\"pool\"]")
                .design();
        Finding gust = only(pool, "gate.gust-slam");
        assertThat(gust.severity()).isEqualTo(Severity.CAUTION);
        assertThat(gust.remedies()).extracting(Remedy::id).containsExactly("closer");
    }
}
