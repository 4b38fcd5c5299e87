package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Panel;
import plumbleaf.engine.gate.Picket;
import plumbleaf.engine.gate.Place;

/** Steel pickets, mesh and sheet in the elevation of a leaf. The frame is drawn over them. */
final class SteelInfill {
    /** Lines of a hatch on paper stand this far apart: close enough to read as a panel, far enough to copy. */
    private static final double HATCH_PAPER_IN = 0.09;

    private SteelInfill() {}

    static List<Mark> of(Leaf leaf, Outside outside, Scale scale, Function<Picket, List<Point>> shape) {
        List<Mark> marks = new ArrayList<>();
        Look thin = Look.thin(Layer.PICKETS).of(leaf.id());
        for (Picket picket : leaf.pickets()) marks.add(Area.edged(shape.apply(picket), Material.STEEL_FACE, thin));
        for (Panel panel : leaf.panels()) {
            List<Point> corners = panel.corners().stream()
                    .map(place -> new Point(place.r().inches(), place.z().inches()))
                    .toList();
            marks.add(Area.edged(MemberShapes.seen(corners, outside), Material.CLEAR, thin));
            marks.addAll(hatch(panel, outside, scale, thin));
        }
        return marks;
    }

    /** Upright lines from edge to edge of a panel: the drawing says that something is there, the list says what. */
    private static List<Mark> hatch(Panel panel, Outside outside, Scale scale, Look thin) {
        List<Mark> marks = new ArrayList<>();
        List<Place> corners = panel.corners();
        double from = corners.get(0).r().inches();
        double to = corners.get(1).r().inches();
        int lines = (int) Math.floor((to - from) / scale.real(HATCH_PAPER_IN));
        for (int i = 1; i < lines; i++) {
            double share = i / (double) lines;
            double r = from + share * (to - from);
            double low = between(corners.get(0), corners.get(1), share);
            double high = between(corners.get(3), corners.get(2), share);
            marks.add(Stroke.line(outside.at(r, low), outside.at(r, high), thin));
        }
        return marks;
    }

    private static double between(Place a, Place b, double share) {
        return a.z().inches() + share * (b.z().inches() - a.z().inches());
    }
}
