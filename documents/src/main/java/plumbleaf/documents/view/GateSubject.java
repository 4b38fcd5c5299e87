package plumbleaf.documents.view;

import plumbleaf.engine.gate.GateParts;
import plumbleaf.engine.gate.GatePlan;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.LeafHang;
import plumbleaf.engine.gate.Swing;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * A leaf of a gate with all that its drawings need. A single gate has one of these, a pair one for each leaf.
 *
 * @param at      which leaf: 0 the only one, or leaf a; 1 leaf b
 * @param parts   as this leaf has them: its own hinge post first
 * @param hingePost id of the post it hangs on: {@code P4}
 * @param latchPost id of the post it closes on; of a pair, the other leaf's
 * @param hingePostTop above grade at its pin axis
 * @param latchPostTop above grade at its pin axis
 */
public record GateSubject(
        GatePlan plan,
        int at,
        GateParts parts,
        String hingePost,
        String latchPost,
        Offset hingePostTop,
        Offset latchPostTop,
        Length latchHeight,
        DisplayUnits units) {
    /** The only leaf of a gate. */
    public GateSubject(
            GatePlan plan,
            GateParts parts,
            String hingePost,
            String latchPost,
            Offset hingePostTop,
            Offset latchPostTop,
            Length latchHeight,
            DisplayUnits units) {
        this(plan, 0, parts, hingePost, latchPost, hingePostTop, latchPostTop, latchHeight, units);
    }

    public Leaf leaf() {
        return plan.hangs().get(at).leaf();
    }

    public Swing swing() {
        return plan.hangs().get(at).swing();
    }

    /** Elevation of finished grade at its pin axis. */
    Offset pinElevation() {
        return plan.hangs().get(at).pinElevation();
    }

    public boolean isPair() {
        return plan.hangs().size() == 2;
    }

    /** What its drawings are called by: the gate, or the leaf of a pair. */
    public String mark() {
        return isPair() ? leaf().id() : plan.gate();
    }

    /** The other leaf of a pair. */
    Leaf other() {
        return plan.hangs().get(1 - at).leaf();
    }

    /** Hand and swing in one sentence; a leaf of a pair says its own. */
    public String sentence() {
        return isPair() ? leaf().hand().sentence() + ", meets " + other().id() : plan.sentence();
    }

    Outside outside() {
        return Outside.of(leaf().hand().hinge());
    }

    /** r of the hinge post's face: the pins stand off it. */
    double hingeFaceR() {
        return -parts.hinge().pinOffset().inches();
    }

    /** r of what the leaf closes on: the latch post's face, or the edge of the other leaf. */
    double latchFaceR() {
        double clear = plan.opening().clear().inches();
        if (!isPair()) return hingeFaceR() + clear;
        double taken = 0;
        for (LeafHang hang : plan.hangs())
            taken += hang.leaf().outline().latchEdge().inches() - hingeFaceR();
        return leaf().outline().latchEdge().inches() + clear - taken;
    }

    /** How wide what it closes on is drawn. */
    double latchWideIn() {
        return isPair()
                ? parts.frame().depth().inches()
                : parts.latchPost().width().inches();
    }

    /** What stands there by name. */
    String closesOn() {
        return isPair() ? other().id() : latchPost;
    }

    /** Ground along the fence line, seen from the pin axis. */
    double groundZ(double rIn) {
        return plan.hangs().get(at).grade().ratio() * rIn;
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
