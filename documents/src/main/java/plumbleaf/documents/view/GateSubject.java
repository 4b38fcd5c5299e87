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

    String length(double inches) {
        return units.length(inches);
    }
}
