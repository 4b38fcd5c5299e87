package plumbleaf.engine.rule;

import java.util.List;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.Length;

/** What codes say of a guard beside a drop. Check: GuardPostCheck. */
public final class GuardRules {
    private GuardRules() {}

    /**
     * @param height least, over the ground people stand on
     * @param widest opening in it or under it
     * @param dwelling of one or two families
     */
    public static List<Finding> of(String part, Length height, Length widest, boolean dwelling, RuleTable rules) {
        RuleRow sphere = rules.row("GD04");
        String opening =
                "The guard " + part + ": its widest opening is " + rules.say().text(widest);
        return List.of(
                rules.say()
                        .atLeast(
                                "guard.height",
                                Severity.MUST_FIX,
                                part,
                                "The guard " + part + ": its least height over the ground beside it",
                                height,
                                rules.row(dwelling ? "GD03" : "GD02")),
                widest.compareTo(sphere.limit()) < 0
                        ? rules.say()
                                .right("guard.sphere", part, opening + ": a 4 in. sphere does not pass (GD04).", sphere)
                        : rules.say().wrong("guard.sphere", part, opening + ": a 4 in. sphere passes (GD04).", sphere));
    }

    /** A drop beside which none is asked. */
    public static Finding none(String part, Length drop, RuleTable rules) {
        return rules.say()
                .atMost(
                        "guard.drop",
                        Severity.CAUTION,
                        part,
                        "The drop beside " + part + ", from which a guard is asked,",
                        drop,
                        rules.row("GD01"));
    }

    /** A guard is no place for a customary build. */
    public static Checked customary(String part, RuleTable rules) {
        return rules.say()
                .wrong(
                        "guard.basis",
                        part,
                        part
                                + " is a guard and is designed on the customary basis: say the engineered basis for"
                                + " it, so that it must stand the wind too.",
                        rules.row("GD05"));
    }

    public static Finding noRail(String part, RuleTable rules) {
        return rules.say()
                .unknown(
                        "guard.rail",
                        part,
                        "The guard " + part
                                + " has no top rail whose bending is worked out: ask its maker for a tested guard.",
                        rules.row("GD05"));
    }

    /** The wall itself is no part of a fence. */
    public static Finding wall(String part, Length drop, double pushLb, double momentLbFt, RuleTable rules) {
        return rules.say()
                .unknown(
                        "guard.wall",
                        part,
                        part + " is a guard over a drop of " + rules.say().text(drop)
                                + ". What holds it up there must take " + DecimalText.fixed(pushLb, 0) + " lb and "
                                + DecimalText.fixed(momentLbFt, 0)
                                + " lb-ft at each post besides the wind and its own earth: a retaining wall is for a"
                                + " licensed engineer.",
                        rules.row("GD05"));
    }
}
