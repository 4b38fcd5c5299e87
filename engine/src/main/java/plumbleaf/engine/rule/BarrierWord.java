package plumbleaf.engine.rule;

import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.Stated;
import plumbleaf.engine.quantity.Length;

/** The clauses on a pool's barrier that a measure or an answer settles alone. Check: PoolBarrierCheck. */
public final class BarrierWord {
    private BarrierWord() {}

    /** Openings of wire, or what slats leave of them. */
    public static Finding mesh(String part, Length opening, RuleTable rules) {
        return rules.say()
                .atMost(
                        "barrier.mesh",
                        Severity.MUST_FIX,
                        part,
                        "The pool barrier " + part
                                + ": the opening of its mesh (the federal guideline asks for 1-1/4 in.)",
                        opening,
                        rules.row("PB09"));
    }

    /** What stands outside and can be climbed. */
    public static Finding climbable(String part, String what, Length away, RuleTable rules) {
        return rules.say()
                .atLeast(
                        "barrier.climb",
                        Severity.MUST_FIX,
                        part,
                        "The pool barrier " + part + ": its distance to the " + what
                                + " outside, which can be climbed,",
                        away,
                        rules.row("PB18"));
    }

    /** Nobody has looked. */
    public static Finding notLookedOutside(RuleTable rules) {
        return rules.say()
                .unknown(
                        "barrier.climb",
                        "site",
                        "Nobody has said what stands within "
                                + rules.say().text(rules.row("PB18").limit())
                                + " outside the pool barrier and can be climbed: trees, walls, pumps, furniture (PB18).",
                        rules.row("PB18"));
    }

    /** The outside was looked over, and nothing was written down. */
    public static Finding nothingOutside(RuleTable rules) {
        return rules.say()
                .right(
                        "barrier.climb",
                        "site",
                        "Somebody looked along the outside of the pool barrier; nothing that can be climbed is nearer than "
                                + rules.say().text(rules.row("PB18").limit()) + " (PB18).",
                        rules.row("PB18"));
    }

    /** A height from a side whose ground nobody shot is no pass. */
    public static Finding sideUnknown(String part, Length onTheLine, RuleTable rules) {
        return rules.say()
                .unknown(
                        "barrier.height-side",
                        part,
                        "The ground on the side away from the pool was not shot all along " + part
                                + ": its height there is not known, "
                                + rules.say().text(onTheLine)
                                + " on its own line. Shoot a foot outside (PB01).",
                        rules.row("PB01"));
    }

    /** A barrier that ends in the open. */
    public static Finding open(String run, String where, RuleTable rules) {
        return rules.say()
                .unknown(
                        "barrier.closed",
                        run,
                        "The pool barrier " + run + " ends free at its " + where
                                + ": it has to meet a wall or another run there, or somebody can walk round it.",
                        rules.row("PB01"));
    }

    /** Whether a gate takes a lock. */
    public static Finding lockable(String gate, Stated<Boolean> lockable, RuleTable rules) {
        return answer("barrier.lock", gate, lockable, "takes a lock", "must take a lock", "PB17", rules);
    }

    /** Whether one leaf of a pair is fixed. */
    public static Finding inactive(String gate, Stated<Boolean> fixed, RuleTable rules) {
        return answer(
                "barrier.pair",
                gate,
                fixed,
                "has one leaf fixed",
                "must have one of its two leaves fixed",
                "PB16",
                rules);
    }

    private static Finding answer(
            String id, String gate, Stated<Boolean> said, String does, String shall, String row, RuleTable rules) {
        String start = "Gate " + gate + " in the pool barrier ";
        return said.match(
                yes -> yes.is()
                        ? rules.say().right(id, gate, start + does + " (" + row + ").", rules.row(row))
                        : rules.say().wrong(id, gate, start + shall + " (" + row + ").", rules.row(row)),
                unsaid -> rules.say()
                        .unknown(
                                id,
                                gate,
                                start + shall + ", and nobody has said whether it does (" + row + ").",
                                rules.row(row)));
    }
}
