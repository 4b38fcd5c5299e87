package plumbleaf.engine.sag;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

class SagFindingsTest {
    private static List<Finding> findings(HungGate gate, double latchIn) {
        GateSag sag = Sags.of(gate, HungLoads.person(Force.pounds(200)), LifeJudgement.USUAL);
        SagLimits limits = new SagLimits(Length.inches(latchIn), "gravity latch", SagLimits.EYE);
        return SagFindings.of("G1a", sag, limits, DisplayUnits.US);
    }

    @Test
    void aLatchThatTakesHalfAnInchPassesAndOneThatTakesASixteenthFails() {
        Finding wide = findings(HungGates.walkGate(), 0.5).get(0);
        Finding narrow = findings(HungGates.walkGate(), 0.0625).get(0);
        assertThat(wide.id()).isEqualTo("sag.latch");
        assertThat(wide.severity()).isEqualTo(Severity.PASS);
        assertThat(narrow.severity()).isEqualTo(Severity.MUST_FIX);
        assertThat(narrow.message()).startsWith("G1a: the latch corner is expected to drop another ");
    }

    @Test
    void softGroundIsTheHarderCheck() {
        List<Finding> all = findings(HungGates.walkGate(), 0.25);
        double likely = all.get(0).measure().orElseThrow().measured();
        double soft = all.get(2).measure().orElseThrow().measured();
        assertThat(soft).isGreaterThan(likely);
    }

    /** A person's residue is counted with the softer footing under it. */
    @Test
    void whatComesAfterHangingGrowsWithTheFootingsGive() {
        HungGate gate = HungGates.walkGate();
        HungLoads person = HungLoads.person(Force.pounds(200));
        AfterHanging likely = Sags.afterHanging(gate, gate.foot().likely(), person, LifeJudgement.USUAL);
        AfterHanging soft = Sags.afterHanging(gate, gate.foot().soft(), person, LifeJudgement.USUAL);
        assertThat(soft.creep().inches()).isGreaterThan(2.9 * likely.creep().inches());
        assertThat(soft.residual()).isGreaterThan(likely.residual());
        assertThat(soft.wear()).isEqualTo(likely.wear());
        GateSag sag = Sags.of(gate, person, LifeJudgement.USUAL);
        assertThat(sag.byTime().afterHanging()).isEqualTo(likely);
        assertThat(sag.afterHangingSoft()).isEqualTo(soft.total());
    }
}
