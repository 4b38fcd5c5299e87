package plumbleaf.engine.rule;

import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.LengthText;

/** Makes the findings of this package: always with the clause and that local code governs. */
final class RuleFinding {
    private RuleFinding() {}

    static String text(Length length) {
        return LengthText.feetAndInches(length.inches());
    }

    static Finding atMost(String id, Severity failed, String part, String what, Length measured, RuleRow row) {
        return Checked.of(
                id,
                failed,
                part,
                what + " is " + text(measured) + "; at most " + text(row.limit()) + " (" + row.id() + ").",
                row.basis(),
                Measure.demand(measured.inches(), row.limit().inches(), "in"));
    }

    static Finding atLeast(String id, Severity failed, String part, String what, Length measured, RuleRow row) {
        return Checked.of(
                id,
                failed,
                part,
                what + " is " + text(measured) + "; at least " + text(row.limit()) + " (" + row.id() + ").",
                row.basis(),
                Measure.provided(measured.inches(), row.limit().inches(), "in"));
    }

    static Finding unknown(String id, String part, String message, RuleRow row) {
        return Checked.note(id, Severity.CANNOT_SAY, part, message, row.basis());
    }

    static Finding wrong(String id, String part, String message, RuleRow row) {
        return Checked.note(id, Severity.MUST_FIX, part, message, row.basis());
    }

    static Finding right(String id, String part, String message, RuleRow row) {
        return Checked.note(id, Severity.PASS, part, message, row.basis());
    }
}
