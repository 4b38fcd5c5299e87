package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.DimensionRows;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.OrdinateRow;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.engine.gate.HingePin;
import plumbleaf.engine.gate.Leaf;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.gate.Outline;
import plumbleaf.engine.gate.Place;

/** The sizes of a frame for saw, jig and welder: heights and distances from one datum, the lower hinge corner of the outline, and the opening below. */
final class ShopDimensions {
    /** Two corners nearer than this are one. */
    private static final double SAME_IN = 0.05;

    private final GateSubject gate;
    private final Leaf leaf;
    private final Outside outside;
    private final MemberShapes shapes;
    private final Scale scale;
    private final List<Mark> marks = new ArrayList<>();

    ShopDimensions(GateSubject gate, MemberShapes shapes, Scale scale) {
        this.gate = gate;
        this.leaf = gate.leaf();
        this.outside = gate.outside();
        this.shapes = shapes;
        this.scale = scale;
    }

    /** The rows stand clear of the ground, whose lowest place is given. */
    List<Mark> under(double groundLow) {
        Outline outline = leaf.outline();
        List<Place> corners = outline.corners();
        double datumR = corners.get(0).r().inches();
        double datumZ = corners.get(0).z().inches();
        double hingeBack =
                gate.hingeFaceR() - GateElevation.postWide(gate.parts().hingePost());
        double latchBack = gate.latchFaceR() + gate.latchWideIn();
        heights(outside.at(hingeBack, 0).x() - outside.rightward() * scale.real(0.55), datumR, datumZ, true);
        heights(outside.at(latchBack, 0).x() + outside.rightward() * scale.real(0.55), datumR, datumZ, false);
        double below = groundLow - scale.real(0.75);
        OrdinateRow row = OrdinateRow.distances(below, scale);
        double low = Math.min(corners.get(0).z().inches(), corners.get(1).z().inches());
        double depth = gate.parts().frame().depth().inches();
        double wide = outline.width().inches();
        for (double along : List.of(0.0, depth, wide - depth, wide))
            row.add(outside.at(datumR + along, low), gate.length(along), leaf.id());
        for (Member brace : leaf.of(MemberRole.BRACE))
            for (Point corner : shapes.of(brace)) {
                double along = corner.x() - datumR;
                if (along > depth + SAME_IN && along < wide - depth - SAME_IN)
                    row.add(outside.at(corner.x(), low), gate.length(along) + " brace", brace.id());
            }
        List<Mark> distances = row.marks();
        marks.addAll(distances);
        double foot = lowest(distances) + scale.real(0.05);
        DimensionRows rows = new DimensionRows(DimensionRows.Side.BELOW, foot - scale.real(0.4), scale);
        double latchEdge = outline.latchEdge().inches();
        rows.add(
                outside.at(gate.hingeFaceR(), foot),
                outside.at(datumR, foot),
                gate.between(gate.hingeFaceR(), datumR),
                leaf.id());
        rows.add(
                outside.at(datumR, foot),
                outside.at(latchEdge, foot),
                gate.between(datumR, latchEdge) + " out to out",
                leaf.id());
        rows.add(
                outside.at(latchEdge, foot),
                outside.at(gate.latchFaceR(), foot),
                gate.between(latchEdge, gate.latchFaceR()),
                leaf.id());
        if (!gate.isPair())
            rows.add(
                    outside.at(gate.hingeFaceR(), foot),
                    outside.at(gate.latchFaceR(), foot),
                    gate.length(gate.plan().opening().clear().inches()) + " clear opening",
                    gate.plan().gate());
        marks.addAll(rows.marks());
        return List.copyOf(marks);
    }

    private double lowest(List<Mark> drawn) {
        double low = Double.POSITIVE_INFINITY;
        for (Mark mark : drawn)
            for (Primitive part : mark.drawn(scale))
                low = Math.min(low, part.extents(scale).minY());
        return low;
    }

    /** Heights above the lower hinge corner along one edge: members, pins and latch. */
    private void heights(double letteringX, double datumR, double datumZ, boolean atHinge) {
        OrdinateRow row = OrdinateRow.heights(letteringX, scale);
        double edge = atHinge ? datumR : leaf.outline().latchEdge().inches();
        double inFace = atHinge
                ? datumR + gate.parts().frame().depth().inches()
                : edge - gate.parts().frame().depth().inches();
        int low = atHinge ? 0 : 1;
        int high = atHinge ? 3 : 2;
        List<Place> corners = leaf.outline().corners();
        add(row, edge, corners.get(low).z().inches(), datumZ, "", leaf.id());
        add(row, edge, corners.get(high).z().inches(), datumZ, "", leaf.id());
        List<Double> said = new ArrayList<>();
        for (Member member : leaf.rails()) {
            List<Point> shape = shapes.of(member);
            List<Double> faces = shape.stream()
                    .filter(corner -> Math.abs(corner.x() - inFace) < 0.01)
                    .map(Point::y)
                    .sorted()
                    .toList();
            for (double z : faces) add(row, inFace, z, datumZ, "", member.id());
            said.addAll(faces);
        }
        for (Member brace : leaf.of(MemberRole.BRACE))
            for (Point corner : shapes.of(brace)) {
                boolean here = Math.abs(corner.x() - inFace) < SAME_IN;
                if (here && said.stream().noneMatch(z -> Math.abs(z - corner.y()) < SAME_IN))
                    add(row, inFace, corner.y(), datumZ, " brace", brace.id());
            }
        Outline outline = leaf.outline();
        if (atHinge && outline.crest().isCurved()) {
            double middle = (outline.hingeEdge().inches() + outline.latchEdge().inches()) / 2;
            add(row, middle, outline.crestIn(middle), datumZ, " infill, middle", leaf.id());
        }
        if (atHinge && outline.crestIn(edge) > outline.corners().get(3).z().inches() + 0.01)
            add(row, edge, outline.crestIn(edge), datumZ, " infill", leaf.id());
        if (atHinge) for (HingePin pin : leaf.pins()) add(row, 0, pin.z().inches(), datumZ, " pin", pin.id());
        else add(row, leaf.latchAt().r().inches(), leaf.latchAt().z().inches(), datumZ, " latch", leaf.id() + ".latch");
        marks.addAll(row.marks());
    }

    private void add(OrdinateRow row, double rIn, double zIn, double datumZ, String word, String of) {
        row.add(outside.at(rIn, zIn), gate.length(zIn - datumZ) + word, of);
    }
}
