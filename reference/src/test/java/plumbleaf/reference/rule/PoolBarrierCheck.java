package plumbleaf.reference.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.rule.PoolFence;
import plumbleaf.engine.rule.PoolGate;
import plumbleaf.engine.rule.RuleTable;
import plumbleaf.jobfile.catalogue.RuleFiles;
import plumbleaf.reference.vectors.Vector;
import plumbleaf.reference.vectors.Vectors;

/**
 * Picket gaps by the distance between rails, and low latch releases, of pool barriers.
 * Source: ISPSC 305 as summarised by county and city barrier pages (Rutherford County TN, Phoenix).
 * Tolerance: the verdict exactly.
 */
class PoolBarrierCheck {
    private static final RuleTable RULES = RuleFiles.standard();

    private static boolean passes(List<Finding> findings, String id) {
        return findings.stream()
                .filter(finding -> finding.id().equals(id))
                .allMatch(finding -> finding.severity() == Severity.PASS);
    }

    private static void verdict(Vector vector, boolean passes) {
        assertThat(passes)
                .as(vector.toString())
                .isEqualTo(vector.word("verdict").equals("pass"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"MX46", "MX47"})
    void picketGaps(String id) {
        Vector vector = Vectors.one("rule", id);
        PoolFence fence = new PoolFence(
                "R1",
                Length.inches(60),
                Length.inches(2),
                false,
                Length.inches(vector.in("gap_in")),
                true,
                Length.inches(vector.in("rail_tops_in")),
                vector.text("rails_on_pool_side").equals("yes"));
        assertThat(fence.gapRule(RULES).limit().inches()).isEqualTo(vector.out("limit_in"));
        verdict(vector, passes(fence.findings(RULES), "barrier.gap"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"MX48", "MX49"})
    void latchReleases(String id) {
        Vector vector = Vectors.one("rule", id);
        PoolGate gate = new PoolGate(
                "G1",
                Stated.of(true),
                true,
                true,
                Stated.of(Length.inches(vector.in("release_in"))),
                Stated.of(vector.text("pool_side").equals("yes")),
                Length.inches(vector.in("gate_top_in")),
                Stated.of(Length.inches(vector.in("largest_opening_in"))),
                Length.ZERO);
        verdict(vector, passes(gate.findings(RULES), "barrier.release"));
    }

    /** A 6 ft fence with three rails outside fails at any gap; a 4 ft one with tops 44 in. apart fails by an inch. */
    @Test
    void closeRailsMustFaceThePool() {
        PoolFence outside = new PoolFence(
                "R1", Length.inches(48), Length.inches(2), false, Length.ZERO, true, Length.inches(44), false);
        assertThat(passes(outside.findings(RULES), "barrier.rails")).isFalse();
        PoolFence farApart = new PoolFence(
                "R1", Length.inches(49.25), Length.inches(2), false, Length.ZERO, true, Length.inches(45.25), false);
        assertThat(passes(farApart.findings(RULES), "barrier.rails")).isTrue();
    }

    /** The gap rule allows 4 in.; the sphere of 4.000 in. must still not pass. */
    @Test
    void theSphereGovernsAtFourInches() {
        PoolFence fence = new PoolFence(
                "R1", Length.inches(60), Length.inches(2), false, Length.inches(4), true, Length.inches(46), true);
        assertThat(passes(fence.findings(RULES), "barrier.gap")).isTrue();
        assertThat(passes(fence.findings(RULES), "barrier.sphere")).isFalse();
    }

    @Test
    void anUnsaidReleaseIsNotAPass() {
        PoolGate gate = new PoolGate(
                "G1",
                Stated.of(false),
                true,
                true,
                Stated.open(),
                Stated.of(true),
                Length.inches(60),
                Stated.open(),
                Length.inches(3));
        assertThat(gate.findings(RULES))
                .filteredOn(finding -> finding.severity() != Severity.PASS)
                .extracting(Finding::id)
                .containsExactlyInAnyOrder("barrier.swing", "barrier.release", "barrier.diagonal");
    }
}
