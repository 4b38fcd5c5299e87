package plumbleaf.engine.rule;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.finding.Basis;
import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.job.AccessibleWay;
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

    /** What on an accessible way no drawing tells is asked, and what it tells is measured. */
    public static List<Finding> way(
            AccessibleWay way, Length clear, Length latch, boolean poolGate, Length bottomGap, RuleTable rules) {
        String gate = way.gate();
        List<Finding> findings = new ArrayList<>();
        findings.add(clearWidth(gate, clear, rules));
        findings.add(rules.say()
                .atLeast(
                        "access.hardware-low",
                        Severity.MUST_FIX,
                        gate,
                        "Gate " + gate + " on an accessible way: its latch",
                        latch,
                        rules.row("AC04L")));
        findings.add(rules.say()
                .atMost(
                        "access.hardware",
                        Severity.MUST_FIX,
                        gate,
                        "Gate " + gate + " on an accessible way: its latch",
                        latch,
                        rules.row(poolGate ? "AC04P" : "AC04")));
        findings.add(bottom(way, bottomGap, rules));
        findings.add(way.threshold()
                .match(
                        said -> rules.say()
                                .atMost(
                                        "access.threshold",
                                        Severity.MUST_FIX,
                                        gate,
                                        "Gate " + gate + " on an accessible way: its threshold",
                                        said.is(),
                                        rules.row("AC03")),
                        unsaid -> rules.say()
                                .unknown(
                                        "access.threshold",
                                        gate,
                                        "Gate " + gate + " on an accessible way: its threshold is not said (AC03).",
                                        rules.row("AC03"))));
        return List.copyOf(findings);
    }

    /** Smooth for the lowest 10 in. of the push side; a leaf that stops above that is exempt. */
    private static Finding bottom(AccessibleWay way, Length bottomGap, RuleTable rules) {
        RuleRow row = rules.row("AC05");
        String start = "Gate " + way.gate() + " on an accessible way: ";
        if (bottomGap.compareTo(row.limit()) > 0)
            return rules.say()
                    .right("access.bottom", way.gate(), start + "it stops above its smooth bottom (AC05).", row);
        return way.smoothBottom()
                .match(
                        said -> said.is()
                                ? rules.say()
                                        .right(
                                                "access.bottom",
                                                way.gate(),
                                                start + "its push side is smooth at the bottom (AC05).",
                                                row)
                                : rules.say()
                                        .wrong(
                                                "access.bottom",
                                                way.gate(),
                                                start + "its push side must be smooth for the lowest "
                                                        + rules.say().text(row.limit()) + ": add a kick plate (AC05).",
                                                row),
                        unsaid -> rules.say()
                                .unknown(
                                        "access.bottom",
                                        way.gate(),
                                        start + "whether its push side is smooth at the bottom is not said (AC05).",
                                        row));
    }

    /** Clear width left by a leaf that stands open at 90 degrees: the opening less the hinge gap and what of the leaf stands in it. */
    public static Length clearOf(Length opening, Length hingeGap, Length leafThickness, Length hardware) {
        double left = opening.inches() - hingeGap.inches() - leafThickness.inches() - hardware.inches();
        return Length.inches(Math.max(0, left));
    }

    /** What a powered gate is owed: never judged here. */
    public static List<Finding> powered(String part, RuleTable rules) {
        RuleRow row = rules.row("PG02");
        StringBuilder owed = new StringBuilder();
        for (RuleRow each : rules.about("powered"))
            owed.append(owed.length() == 0 ? "" : "; ")
                    .append(each.what())
                    .append(" (")
                    .append(each.id())
                    .append(", ")
                    .append(each.clause())
                    .append(')');
        return List.of(
                Checked.note(
                        "powered.deferred",
                        Severity.CANNOT_SAY,
                        part,
                        "Gate " + part
                                + " is or will be powered. Hand it to a qualified installer, who answers for these; nothing of it is"
                                + " judged here: " + owed + ". Local code governs.",
                        row.basis()),
                Checked.note(
                        "powered.conduit",
                        Severity.CAUTION,
                        part,
                        "Gate " + part
                                + ": lay conduit and sleeves to both posts, cut the loop and form the operator's pad before the pour; breaking new concrete costs more"
                                + " than the gate's posts.",
                        Basis.commonPractice("sleeves before concrete")));
    }
}
