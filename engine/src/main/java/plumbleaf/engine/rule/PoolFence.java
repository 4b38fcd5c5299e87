package plumbleaf.engine.rule;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;

/**
 * A stretch of pool barrier as it will stand in its driest season.
 *
 * @param part the run or bay
 * @param outsideHeight least height, measured on the side away from the pool at the worst place
 * @param groundGap largest gap under it, the triangle under a stepped end too
 * @param hardGround whether concrete lies under it
 * @param picketGap widest opening in what fills it, when it is driest; zero for none
 * @param dries whether that opening changes with the season, as between boards
 * @param railTops least distance between tops of neighbouring rails; the whole height where there is one rail
 * @param railsOnPoolSide whether the rails face the pool
 */
public record PoolFence(
        String part,
        Length outsideHeight,
        Length groundGap,
        boolean hardGround,
        Length picketGap,
        boolean dries,
        Length railTops,
        boolean railsOnPoolSide) {

    /** Whether the rails are near enough to be climbed. Source: ISPSC 305.2. Check: PoolBarrierCheck (MX46, MX47). */
    public boolean railsAreClose(RuleTable rules) {
        return railTops.compareTo(rules.row("PB05").limit()) < 0;
    }

    /** The row that limits the gap between its pickets. */
    public RuleRow gapRule(RuleTable rules) {
        return rules.row(railsAreClose(rules) ? "PB06" : "PB07");
    }

    /** Every check of a barrier without its gates, by the model code's height. */
    public List<Finding> findings(RuleTable rules) {
        return findings(rules, Stated.open());
    }

    /** @param local least height that local code asks for, where it is more than the model code's */
    public List<Finding> findings(RuleTable rules, Stated<Length> local) {
        List<Finding> findings = new ArrayList<>();
        RuleRow model = rules.row("PB01");
        Length asked = local.or(model.limit());
        RuleRow height = asked.compareTo(model.limit()) > 0 ? model.withLimit(asked) : model;
        findings.add(rules.say()
                .atLeast(
                        "barrier.height",
                        Severity.MUST_FIX,
                        part,
                        "The pool barrier " + part + ": its least height from outside",
                        outsideHeight,
                        height));
        findings.add(rules.say()
                .atMost(
                        "barrier.ground",
                        Severity.MUST_FIX,
                        part,
                        "The pool barrier " + part + ": the gap under it",
                        groundGap,
                        rules.row(hardGround ? "PB03" : "PB02")));
        findings.add(rules.say()
                .atMost(
                        "barrier.gap",
                        Severity.MUST_FIX,
                        part,
                        "The pool barrier " + part + ": the widest gap in it" + (dries ? " when it is driest" : ""),
                        picketGap,
                        gapRule(rules)));
        findings.add(sphere(rules));
        findings.add(rails(rules));
        return List.copyOf(findings);
    }

    /** A gap of exactly the sphere's size lets it through. */
    private Finding sphere(RuleTable rules) {
        RuleRow row = rules.row("PB04");
        Length widest = hardGround && groundGap.compareTo(picketGap) > 0 ? groundGap : picketGap;
        String opening = "The pool barrier " + part + ": its widest opening is "
                + rules.say().text(widest);
        return widest.compareTo(row.limit()) < 0
                ? rules.say().right("barrier.sphere", part, opening + ": a 4 in. sphere does not pass (PB04).", row)
                : rules.say().wrong("barrier.sphere", part, opening + ": a 4 in. sphere passes (PB04).", row);
    }

    private Finding rails(RuleTable rules) {
        RuleRow row = rules.row("PB05");
        String tops = "Tops of the rails of " + part + " are " + rules.say().text(railTops) + " apart";
        if (railsAreClose(rules) && !railsOnPoolSide)
            return rules.say()
                    .wrong(
                            "barrier.rails",
                            part,
                            tops + ", less than " + rules.say().text(row.limit())
                                    + ", and they face outside: a ladder. Turn the rails to the pool, or set them farther apart (PB05).",
                            row);
        return rules.say()
                .right(
                        "barrier.rails",
                        part,
                        tops + (railsOnPoolSide ? " and face the pool (PB05)." : ": too far to climb (PB05)."),
                        row);
    }
}
