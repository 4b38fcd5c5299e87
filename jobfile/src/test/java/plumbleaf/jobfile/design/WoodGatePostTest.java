package plumbleaf.jobfile.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.design.Design;
import plumbleaf.engine.design.GateDesign;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.takeoff.TakeoffLine;

/** A gate hung on posts of wood. */
class WoodGatePostTest {
    private static final Yard THROUGH = on("PINE-6x6", "HINGE-WOOD-0.75");
    private static final Design BOLTED = THROUGH.design();

    private static Yard on(String post, String hinge) {
        return Yard.nursery()
                .with("\"hingePost\": \"F1083-REG-2.5\"", "\"hingePost\": \"" + post + "\"")
                .with("\"latchPost\": \"F1083-REG-2.5\"", "\"latchPost\": \"" + post + "\"")
                .with("\"hole\": \"12\\\"\"", "\"hole\": \"18\\\"\"")
                .with("HINGE-ADJ-0.625", hinge);
    }

    private static double link(Design design, String name) {
        return Yard.gate(design).loadPath().stream()
                .filter(link -> link.link().equals(name))
                .mapToDouble(LinkUse::utilisation)
                .max()
                .orElseThrow();
    }

    private static List<String> items(Design design) {
        return design.quote().takeoff().lines().stream().map(TakeoffLine::item).toList();
    }

    @Test
    void theChainGoesThroughBoltsAndPost() {
        GateDesign gate = Yard.gate(BOLTED);
        assertThat(gate.loadPath())
                .extracting(LinkUse::link)
                .contains("bolts to post", "hinge post at its holes", "hinge post", "hinge post footing", "latch post")
                .doesNotContain("weld to post", "hinge post wall");
        assertThat(gate.loadPath()).allSatisfy(link -> {
            assertThat(link.utilisation()).isFinite();
            assertThat(link.work().numbers()).isNotBlank();
        });
    }

    @Test
    void postsBoltsAndWideWashersAreOrdered() {
        assertThat(items(BOLTED)).contains("PINE-6x6", "bolt-0.5x7", "wide-washer-0.5", "HINGE-WOOD-0.75");
        Design lagged = on("PINE-6x6", "HINGE-LAG-0.75").design();
        assertThat(items(lagged)).contains("lag-0.5x4").doesNotContain("bolt-0.5x7");
        assertThat(lagged.findings()).noneMatch(finding -> finding.message().contains("has no price"));
        assertThat(link(lagged, "lag screws to post")).isPositive();
    }

    @Test
    void aThinnerPostIsWorkedHarderAndDropsMore() {
        Design thin = on("PINE-4x4", "HINGE-WOOD-0.75").design();
        assertThat(link(thin, "hinge post")).isGreaterThan(link(BOLTED, "hinge post"));
        assertThat(Yard.gate(thin).hung().get(0).sag().byCause().post())
                .isGreaterThan(Yard.gate(BOLTED).hung().get(0).sag().byCause().post());
        Finding edge = Yard.findings(thin, "hinge.post-edge").get(0);
        assertThat(edge.measure().orElseThrow().ratio().orElseThrow()).isCloseTo(2 / 1.75, within(1e-9));
    }

    @Test
    void aWoodPostCreepsAsMuchAgainAsItBent() {
        var sag = Yard.gate(BOLTED).hung().get(0).sag();
        double bent = sag.byCause().post().inches();
        double ground = 0.3 * sag.byCause().footing().inches();
        assertThat(sag.byTime().afterHanging().creep().inches()).isCloseTo(ground + bent, within(1e-9));
    }

    @Test
    void nothingIsWeldedToWoodAndNoLagHoldsInSteel() {
        Finding weld = Yard.findings(on("PINE-6x6", "HINGE-ADJ-0.625").design(), "hinge.post-fixing")
                .get(0);
        assertThat(weld.severity()).isEqualTo(Severity.MUST_FIX);
        Finding lag = Yard.findings(
                        Yard.nursery().with("HINGE-ADJ-0.625", "HINGE-LAG-0.75").design(), "hinge.post-fixing")
                .get(0);
        assertThat(lag.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(lag.message()).contains("nothing in a steel post");
    }

    @Test
    void itIsSaidHowMuchRotThePostHasToSpare() {
        List<Finding> life = Yard.findings(BOLTED, "post.life");
        assertThat(life)
                .hasSize(2)
                .allSatisfy(
                        each -> assertThat(each.message()).contains("of its wood is gone all round at grade", "UC4B"));
        assertThat(Yard.findings(Yard.nursery().design(), "post.life")).isEmpty();
    }

    @Test
    void aPoleAndAPostThatStoodBeforeHangAGateToo() {
        Design pole = on("PINE-R6", "HINGE-WOOD-0.75").design();
        assertThat(link(pole, "hinge post")).isPositive();
        Design old = THROUGH.with(
                        "\"hingePost\": { \"support\": \"new-footing\" }",
                        "\"hingePost\": { \"support\": { \"kind\": \"existing\", \"feel\": \"firm\", \"depth\": \"30\\\"\" } }")
                .design();
        assertThat(Yard.findings(old, "existing.section").get(0).message()).contains("probe it with an awl");
        assertThat(Yard.gate(old).hung()).hasSize(1);
        assertThat(Yard.findings(old, "support.wood")).isEmpty();
    }
}
