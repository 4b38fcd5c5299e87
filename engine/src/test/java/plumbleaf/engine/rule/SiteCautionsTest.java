package plumbleaf.engine.rule;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.Force;
import plumbleaf.engine.quantity.Length;

class SiteCautionsTest {
    @Test
    void cautionsAreNeverAPass() {
        assertThat(SiteCautions.digging(true, true)).allMatch(one -> one.severity() == Severity.CAUTION);
        assertThat(SiteCautions.zincFume("G1").severity()).isEqualTo(Severity.CAUTION);
    }

    @Test
    void twoPeopleAboveFiftyPounds() {
        assertThat(SiteCautions.lifting("G1a", Force.pounds(50.5)).message())
                .isEqualTo("Leaf G1a weighs 51 lb: two people to hang it, and blocks under it.");
        assertThat(SiteCautions.lifting("G1a", Force.pounds(50)).message()).contains("one person");
    }

    @Test
    void anOpenLeafTakesFromTheOpening() {
        assertThat(AccessGate.clearOf(Length.inches(36), Length.inches(0.75), Length.inches(2), Length.inches(0.5)))
                .isEqualTo(Length.inches(32.75));
    }
}
