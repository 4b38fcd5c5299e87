package plumbleaf.engine.rule;

import plumbleaf.engine.finding.Checked;
import plumbleaf.engine.finding.Finding;
import plumbleaf.engine.finding.Measure;
import plumbleaf.engine.finding.Severity;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;

/**
 * Makes the findings of this package: always with the clause and that local code governs.
 *
 * @param display units that lengths are told in
 */
record RuleFinding(DisplayUnits display) {
    String text(Length length) {
        return display.length(length);
    }

    Finding atMost(String id, Severity failed, String part, String what, Length measured, RuleRow row) {
        return Checked.of(
                id,
                failed,
                part,
                what + " is " + text(measured) + "; at most " + text(row.limit()) + " (" + row.id() + ").",
                row.basis(),
                Measure.demand(measured.inches(), row.limit().inches(), "in"));
    }

    Finding atLeast(String id, Severity failed, String part, String what, Length measured, RuleRow row) {
        return Checked.of(
                id,
                failed,
                part,
                what + " is " + text(measured) + "; at least " + text(row.limit()) + " (" + row.id() + ").",
                row.basis(),
                Measure.provided(measured.inches(), row.limit().inches(), "in"));
    }

    Finding unknown(String id, String part, String message, RuleRow row) {
        return Checked.note(id, Severity.CANNOT_SAY, part, message, row.basis());
    }

    Checked wrong(String id, String part, String message, RuleRow row) {
        return Checked.note(id, Severity.MUST_FIX, part, message, row.basis());
    }

    Finding right(String id, String part, String message, RuleRow row) {
        return Checked.note(id, Severity.PASS, part, message, row.basis());
    }
}
