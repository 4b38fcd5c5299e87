package plumbleaf.engine.rule;

import java.util.List;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.Length;

/** Gates that people must get through, and gates that a machine opens. */
public final class AccessGate {
    private AccessGate() {}

    /**
     * Clear width of a gate open at 90 degrees. A caution: an accessible route is required at public places, not in a private yard.
     *
     * @param clear from the latch post's face to the open leaf, its hardware taken off
     */
    public static Finding clearWidth(String part, Length clear, RuleTable rules) {
        return rules.say()
                .atLeast(
                        "access.width",
                        Severity.CAUTION,
                        part,
                        "Gate " + part + ": its clear width at 90 degrees, where the way must be accessible,",
                        clear,
                        rules.row("AC01"));
    }

    /** Clear width left by a leaf that stands open at 90 degrees: the opening less the hinge gap and what of the leaf stands in it. */
    public static Length clearOf(Length opening, Length hingeGap, Length leafThickness, Length hardware) {
        double left = opening.inches() - hingeGap.inches() - leafThickness.inches() - hardware.inches();
        return Length.inches(Math.max(0, left));
    }

    /** What a powered gate is owed: never judged here. */
    public static List<Finding> powered(String part, RuleTable rules) {
        RuleRow row = rules.row("PG02");
        return List.of(Checked.note(
                "powered.deferred",
                Severity.CANNOT_SAY,
                part,
                "Gate " + part
                        + " is or will be powered. Entrapment, the operator, separate foot gate, latch and gravity are for ASTM F2200, UL 325 and a qualified"
                        + " installer; nothing of it is judged here (PG01 to PG11).",
                row.basis()));
    }
}
