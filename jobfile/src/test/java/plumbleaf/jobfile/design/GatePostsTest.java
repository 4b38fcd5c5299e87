package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.HungLeaf;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.design.PostDesign;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Remedy;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.line.Bay;
import plumbleaf.engine.line.Post;
import plumbleaf.engine.line.RunLayout;
import plumbleaf.engine.quantity.LengthText;
import plumbleaf.engine.strength.RatedGust;
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
        assertThat(gust.remedies()).extracting(Remedy::id).containsExactly("closer");
    }

    /** 78 degrees in five seconds, the fastest that a closer is set to: the blow of 12 mph becomes that of its edge at r x 0.272 / 17.6 mph; what a gust asks of the closer its maker says. */
    @Test
    void aCloserChecksTheBlowAndIsAskedWhatAGustTurnsItWith() {
        String person = "\"person\": \"200 lb\",";
        Yard hard = Yard.nursery().with(person, person + " \"slamSpeed\": \"12 mph\",");
        Design let = hard.design();
        Design checked = hard.with("\"hinges\": {", "\"hinges\": { \"closer\": true,")
                .with("\"holdOpen\": \"cane-bolt\"", "\"holdOpen\": \"free\"")
                .design();
        double edge = Yard.gate(let).plan().leaves().get(0).latchAt().r().inches();
        double share = edge * Math.toRadians(78) / 5 / 17.6 / 12;
        assertThat(ratio(only(checked, "gate.slam"))).isCloseTo(share * ratio(only(let, "gate.slam")), within(1e-9));
        assertThat(only(checked, "gate.slam").message())
                .contains("brought home by its closer at ", "5 seconds from 90 to 12 degrees")
                .doesNotContain("a hand");
        assertThat(only(checked, "gate.closer").severity()).isEqualTo(Severity.CANNOT_SAY);
        assertThat(checked.findings()).noneMatch(finding -> finding.id().equals("gate.gust-slam"));
        assertThat(checked.quote().takeoff().lines())
                .extracting(TakeoffLine::item)
                .contains("gate-closer");
        Remedy closer = only(let, "gate.slam").remedies().get(0);
        Design fitted =
                hard.with("\"hinges\": {", "\"hinges\": { \"closer\": true,").design();
        assertThat(closer.priceChange())
                .contains(
                        fitted.quote().price().total().minus(let.quote().price().total()));
    }

    /** The latch post in a hole of its own: its concrete alone changes, and the leaf drops as before. */
    @Test
    void theLatchPostHasAFootingOfItsOwnWhereItIsTold() {
        Design told = Yard.nursery()
                .with(
                        "\"hole\": \"12\\\"\", \"depth\": \"36\\\"\"",
                        "\"hole\": \"12\\\"\", \"depth\": \"36\\\"\", \"latchHole\": \"10\\\"\", \"latchDepth\": \"48\\\"\"")
                .design();
        PostDesign hinge = told.post(Yard.gate(told).hingePost()).orElseThrow();
        PostDesign latch = told.post(Yard.gate(told).latchPost()).orElseThrow();
        assertThat(hinge.depth().inches()).isEqualTo(36);
        assertThat(hinge.hole().inches()).isEqualTo(12);
        assertThat(latch.depth().inches()).isEqualTo(48);
        assertThat(latch.hole().inches()).isEqualTo(10);
        assertThat(Yard.gate(told).hung().get(0).sag().total())
                .isEqualTo(Yard.gate(NURSERY).hung().get(0).sag().total());
        assertThat(told.quote().price().total())
                .isNotEqualTo(NURSERY.quote().price().total());
    }

    /** The least of its parts is the gate's own gust, and frame, hinges, latch, both posts and footings are among them, each once. */
    @Test
    void everyPartHasItsRatedGust() {
        RatedGust gust = Yard.gate(NURSERY).rated().orElseThrow();
        List<String> links = gust.parts().stream().map(RatedGust.Part::link).toList();
        assertThat(links).doesNotHaveDuplicates().hasSizeGreaterThan(7);
        assertThat(String.join("; ", links)).contains("latch ", "post P5", "post P6", "footing F5", "footing F6");
        double least = gust.parts().stream()
                .mapToDouble(part -> part.allowable().mph())
                .min()
                .orElseThrow();
        assertThat(least).isEqualTo(gust.allowable().mph());
        assertThat(NURSERY.rated().orElseThrow().parts()).isEmpty();
    }

    /** In holes 24 in. wide two posts 51 in. apart, 2.1 widths, share their soil in wind: what was deep enough alone is not; in 12 in. holes, 4.2 widths, and deeper still it is. */
    @Test
    void footingsNearEachOtherShareTheirSoil() {
        assertThat(NURSERY.findings()).noneMatch(finding -> finding.id().equals("footing.near"));
        double alone =
                dug("24", 36)
                        .post(Yard.gate(NURSERY).hingePost())
                        .orElseThrow()
                        .footing()
                        .orElseThrow()
                        .needs()
                        .stream()
                        .flatMap(need -> need.lateral().stream())
                        .filter(work -> work.worst().combination().hasWind())
                        .mapToDouble(work -> work.depth().inches())
                        .max()
                        .orElseThrow();
        double needed = dug("24", alone + 0.25).findings().stream()
                .filter(finding -> finding.id().equals("footing.near")
                        && finding.part().equals(Yard.gate(NURSERY).hingePost()))
                .mapToDouble(finding -> finding.measure().orElseThrow().measured())
                .findFirst()
                .orElseThrow();
        assertThat(needed).isBetween(1.02 * alone, 1.25 * alone);
        assertThat(dug("24", needed + 6).findings())
                .noneMatch(finding -> finding.id().equals("footing.near"));
    }

    private static Design dug(String hole, double depthIn) {
        return Yard.nursery()
                .with(
                        "\"hole\": \"12\\\"\", \"depth\": \"36\\\"\"",
                        "\"hole\": \"" + hole + "\\\"\", \"depth\": \""
                                + LengthText.exact(depthIn).replace("\"", "\\\"") + "\"")
                .design();
    }

    /** Both posts 24 in. off the line, the bays beside them the hypotenuse of their stations and 24 in., their rails as long; the rest of the fence as it was. */
    @Test
    void theFenceLeansBackToAGateThatIsSetBack() {
        Design back = Yard.nursery()
                .with("\"swing\": \"in\",", "\"swing\": \"in\", \"setBack\": \"24\\\"\",")
                .design();
        for (String id : List.of(Yard.gate(back).hingePost(), Yard.gate(back).latchPost())) {
            Post now = back.post(id).orElseThrow().post();
            Post before = NURSERY.post(id).orElseThrow().post();
            assertThat(now.at().distanceTo(before.at()).inches()).isCloseTo(24, within(1e-9));
            assertThat(now.station()).isEqualTo(before.station());
        }
        int leaning = 0;
        for (RunLayout run : back.layout().runs())
            for (Bay bay : run.bays()) {
                double along = bay.end().inches() - bay.start().inches();
                boolean leans = bay.level().inches() > along + 1e-6;
                if (!leans) continue;
                leaning++;
                assertThat(bay.level().inches()).isCloseTo(Math.hypot(along, 24), within(1e-9));
                assertThat(run.startOf(bay).distanceTo(run.endOf(bay)).inches())
                        .isCloseTo(bay.level().inches(), within(1e-6));
                assertThat(bay.rails().get(0).cut().inches())
                        .isGreaterThanOrEqualTo(bay.level().inches());
                int last = bay.pickets().pickets().size() - 1;
                assertThat(bay.pickets().pickets().get(last).station().inches())
                        .isLessThan(bay.end().inches() + 3);
            }
        assertThat(leaning).isEqualTo(2);
        assertThat(back.findings())
                .anySatisfy(finding -> assertThat(finding.id()).isEqualTo("gate.set-back"));
        assertThat(back.quote().price().total())
                .isNotEqualTo(NURSERY.quote().price().total());
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
        double out = (hung.gate().hinge().slack().inches()
                        + Math.max(0, -hung.sag().gust().away().inches()))
                / hung.limits().bite().inches();
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
