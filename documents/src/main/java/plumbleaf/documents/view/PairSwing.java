package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Scale;

/** The swing of both leaves of a pair from above, outside below. */
public final class PairSwing {
    private PairSwing() {}

    public static Drawing of(GateSubject a, GateSubject b, Scale scale) {
        List<Mark> marks = new ArrayList<>(leaf(a, scale));
        double pins = a.plan().opening().clear().inches() + a.hingeFaceR() + b.hingeFaceR();
        marks.addAll(Shifted.by(leaf(b, scale), pins, 0, scale));
        return Drawing.of("Pair " + a.plan().gate() + ", swing from above", scale, marks);
    }

    private static List<Mark> leaf(GateSubject leaf, Scale scale) {
        return SwingPlan.leafOnly(
                leaf.mark(), leaf.swing(), leaf.leaf().outline().latchEdge().inches(), leaf.units(), scale);
    }
}
