package plumbleaf.documents.view;

import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A gate with all that its drawings need.
 *
 * @param hingePost id of the post it hangs on: {@code P4}
 * @param latchPost id of the post it closes on
 * @param hingePostTop above grade at the pin axis
 * @param latchPostTop above grade at the pin axis
 */
public record GateSubject(
        GatePlan plan,
        GateParts parts,
        String hingePost,
        String latchPost,
        Offset hingePostTop,
        Offset latchPostTop,
        Length latchHeight,
        DisplayUnits units) {
    Leaf leaf() {
        return plan.leaves().get(0);
    }

    Outside outside() {
        return Outside.of(leaf().hand().hinge());
    }

    /** r of the hinge post's face: the pins stand off it. */
    double hingeFaceR() {
        return -parts.hinge().pinOffset().inches();
    }

    /** r of the latch post's face. */
    double latchFaceR() {
        return hingeFaceR() + plan.opening().clear().inches();
    }

    /** Ground along the fence line, seen from the pin axis. */
    double groundZ(double rIn) {
        return plan.grade().ratio() * rIn;
    }

    /** A length between two places along the leaf: the difference of the places as they are rounded, so that a chain of them adds up. */
    String between(double fromR, double toR) {
        return units.length(rounded(toR - hingeFaceR()) - rounded(fromR - hingeFaceR()));
    }

    private double rounded(double inches) {
        return units == DisplayUnits.US ? Math.round(inches * 16) / 16.0 : Math.round(inches * 25.4) / 25.4;
    }

    String length(double inches) {
        return units.length(inches);
    }
}
