package plumbleaf.documents.view;

import java.util.List;
import plumbleaf.documents.drawing.Labels;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.SectionMark;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Outline;

/**
 * Where a leaf's sections are cut, on its elevation. The corners are A to D, so the sections have the last letters: X upright through a
 * rail, Y level at the latch, Z level at a hinge.
 */
final class SectionPlaces {
    /** Of the leaf's width from the hinges: near them, clear of the weld marks at the latch corner. */
    private static final List<Double> RAIL_CUT_AT = List.of(0.2, 0.25, 0.3, 0.35, 0.4, 0.45, 0.5, 0.6);

    private static final double BEYOND_IN = 0.14;
    private static final double WITHIN_IN = 0.5;

    private SectionPlaces() {}

    /** Clear of the lettering told of. */
    static List<SectionMark> on(GateSubject gate, Scale scale, Labels labels) {
        Leaf leaf = gate.leaf();
        Outside outside = gate.outside();
        Outline outline = leaf.outline();
        double depth = gate.parts().frame().depth().inches();
        double hinge = outline.hingeEdge().inches();
        double latch = outline.latchEdge().inches();
        double beyond = scale.real(BEYOND_IN);
        double within = scale.real(WITHIN_IN);
        Look look = Look.note().of(leaf.id());

        double latchZ = leaf.latchAt().z().inches();
        SectionMark level = downward(
                outside.at(latch - depth - within, latchZ),
                outside.at(gate.latchFaceR() + gate.latchWideIn() + beyond, latchZ),
                "Y",
                look);
        double pinZ = leaf.pins().get(leaf.pins().size() - 1).z().inches();
        double post = GateElevation.postWide(gate.parts().hingePost());
        SectionMark pin = downward(
                outside.at(gate.hingeFaceR() - post - beyond, pinZ),
                outside.at(hinge + depth + within, pinZ),
                "Z",
                look);
        labels.keepFreeText(List.of(level, pin));
        SectionMark rail = rail(gate, RAIL_CUT_AT.get(0), scale);
        for (double share : RAIL_CUT_AT) {
            if (labels.isFree(rail)) break;
            rail = rail(gate, share, scale);
        }
        return List.of(rail, level, pin);
    }

    /** Looked at towards the left of the sheet, so that outside lies at the left of the section whichever way the leaf hangs. */
    private static SectionMark rail(GateSubject gate, double share, Scale scale) {
        Outline outline = gate.leaf().outline();
        double hinge = outline.hingeEdge().inches();
        double at = hinge + share * (outline.latchEdge().inches() - hinge);
        double top = outline.corners().get(3).z().inches()
                + (at - hinge) * outline.top().ratio();
        double beyond = scale.real(0.22);
        return new SectionMark(
                gate.outside().at(at, top + beyond),
                gate.outside().at(at, top - gate.parts().frame().depth().inches() - beyond),
                Math.PI,
                "X",
                Look.note().of(gate.leaf().id()));
    }

    private static SectionMark downward(Point from, Point to, String letter, Look look) {
        return new SectionMark(from, to, -Math.PI / 2, letter, look);
    }
}
