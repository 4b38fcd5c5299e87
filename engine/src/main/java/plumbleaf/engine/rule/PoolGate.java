package plumbleaf.engine.rule;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;

/**
 * A gate in a pool barrier.
 *
 * @param swingsOut whether it opens away from the pool
 * @param release height of the latch release above grade
 * @param releaseOnPoolSide whether a hand has to reach over to it, since it is on the pool's side alone
 * @param top height of the gate's top
 * @param nearOpening largest opening within 18 in. of the release, in the fence beside it too
 * @param diagonalOpening largest opening between a brace and another member on the climbable side; zero for none
 */
public record PoolGate(
        String part,
        Stated<Boolean> swingsOut,
        boolean closesItself,
        boolean latchesItself,
        Stated<Length> release,
        Stated<Boolean> releaseOnPoolSide,
        Length top,
        Stated<Length> nearOpening,
        Length diagonalOpening) {

    /** Every check of the gate itself; its fence's checks go beside. Check: PoolBarrierCheck (MX48, MX49). */
    public List<Finding> findings(RuleTable rules) {
        List<Finding> findings = new ArrayList<>();
        RuleRow latch = rules.row("PB13");
        findings.add(swingsOut.match(
                said -> must(
                        rules,
                        "barrier.swing",
                        said.is(),
                        "opens away from the pool (PB10)",
                        "must open away from the pool (PB10)",
                        latch),
                unsaid -> rules.say()
                        .unknown(
                                "barrier.swing",
                                part,
                                "Gate " + part
                                        + " in the pool barrier must open away from the pool, and which way it swings is not said (PB10).",
                                latch)));
        findings.add(must(rules, "barrier.closer", closesItself, "closes itself", "must close itself (PB11)", latch));
        findings.add(must(rules, "barrier.latch", latchesItself, "latches itself", "must latch itself (PB12)", latch));
        findings.add(releaseFinding(rules));
        if (!diagonalOpening.isZero())
            findings.add(rules.say()
                    .atMost(
                            "barrier.diagonal",
                            Severity.MUST_FIX,
                            part,
                            "Gate " + part + " in the pool barrier: the opening beside its brace",
                            diagonalOpening,
                            rules.row("PB08")));
        return List.copyOf(findings);
    }

    private Finding must(RuleTable rules, String id, boolean holds, String does, String shall, RuleRow row) {
        String gate = "Gate " + part + " in the pool barrier ";
        return holds
                ? rules.say().right(id, part, gate + does + ".", row)
                : rules.say().wrong(id, part, gate + shall + ".", row);
    }

    private Finding releaseFinding(RuleTable rules) {
        RuleRow high = rules.row("PB13");
        return release.match(
                said -> atHeight(said.is(), rules),
                unsaid -> rules.say()
                        .unknown(
                                "barrier.release",
                                part,
                                "Gate " + part
                                        + " in the pool barrier: the height of the latch release is not given (PB13).",
                                high));
    }

    private Finding atHeight(Length height, RuleTable rules) {
        RuleRow high = rules.row("PB13");
        if (height.compareTo(high.limit()) >= 0)
            return rules.say()
                    .atLeast(
                            "barrier.release",
                            Severity.MUST_FIX,
                            part,
                            "Gate " + part + " in the pool barrier: the latch release",
                            height,
                            high);
        RuleRow below = rules.row("PB14");
        Length under = top.compareTo(height) > 0 ? top.minus(height) : Length.ZERO;
        if (!releaseOnPoolSide.isSaid())
            return rules.say()
                    .unknown(
                            "barrier.release",
                            part,
                            "Gate " + part + " in the pool barrier: the latch release is at "
                                    + rules.say().text(height) + ", below "
                                    + rules.say().text(high.limit())
                                    + ", and nobody has said whether it is on the pool side alone (PB13, PB14).",
                            below);
        if (!releaseOnPoolSide.or(false) || under.compareTo(below.limit()) < 0)
            return rules.say()
                    .wrong(
                            "barrier.release",
                            part,
                            "Gate " + part + " in the pool barrier: the latch release is at "
                                    + rules.say().text(height)
                                    + ". Below " + rules.say().text(high.limit())
                                    + " it must be on the pool side, at least "
                                    + rules.say().text(below.limit()) + " under the top; it is "
                                    + rules.say().text(under)
                                    + " under it (PB13, PB14).",
                            below);
        return nearOpening.match(
                said -> rules.say()
                        .atMost(
                                "barrier.release",
                                Severity.MUST_FIX,
                                part,
                                "Gate " + part
                                        + " in the pool barrier: the largest opening within 18 in. of its low latch release",
                                said.is(),
                                rules.row("PB15")),
                unsaid -> rules.say()
                        .unknown(
                                "barrier.release",
                                part,
                                "Gate " + part
                                        + " in the pool barrier: openings within 18 in. of its low latch release are not given (PB15).",
                                rules.row("PB15")));
    }
}
