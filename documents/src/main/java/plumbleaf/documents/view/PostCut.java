package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.section.PostStock;

/** A gate post cut through, seen from above: a tube with its wall, or wood with its grain. */
final class PostCut {
    private PostCut() {}

    /**
     * @param face r of the face that looks into the opening
     * @param away 1 where the post stands beyond its face in the direction of r, -1 the other way
     */
    static List<Mark> of(Outside outside, PostStock section, double face, int away, String id, Scale scale) {
        List<Mark> marks = new ArrayList<>();
        double wide = section.width().inches();
        double middle = face + away * wide / 2;
        Look look = Look.visible(Layer.POSTS).of(id);
        boolean wood = section.match(steel -> false, is -> true);
        double wall = section.match(steel -> steel.nominalWall().inches(), is -> 0.0);
        double half = section.depth().inches() / 2;
        Box outer = Box.of(outside.at(middle - wide / 2, -half), outside.at(middle + wide / 2, half));
        if (section.isRound()) {
            marks.add(Arc.circle(outside.at(middle, 0), wide / 2, look));
            if (!wood)
                marks.add(
                        Arc.circle(outside.at(middle, 0), Math.max(wide / 2 - wall, wide / 8), look.as(LineKind.THIN)));
        } else if (wood) {
            marks.add(Area.edged(outer.corners(), Material.END_GRAIN, look));
        } else {
            marks.add(Area.edged(outer.corners(), Material.STEEL_FACE, look));
            if (outer.width() > 3 * wall)
                marks.add(Area.edged(outer.grown(-wall).corners(), Material.CLEAR, look.as(LineKind.THIN)));
        }
        marks.add(Text.small(outside.at(middle + away * (wide / 2) + away * scale.real(0.22), 0), id)
                .centred()
                .bold()
                .with(Look.note().of(id)));
        return marks;
    }
}
