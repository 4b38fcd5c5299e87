package plumbleaf.documents.view;

import java.util.List;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.engine.section.Section;

/** A tube cut through, with its wall, both to scale. */
final class TubeCut {
    private TubeCut() {}

    static List<Mark> of(Section tube, Box outer, Look look) {
        double wall = tube.nominalWall().inches();
        if (tube.isRound())
            return List.of(
                    Arc.circle(outer.centre(), outer.width() / 2, look),
                    Arc.circle(outer.centre(), outer.width() / 2 - wall, look.as(LineKind.THIN)));
        return List.of(
                Area.edged(outer.corners(), Material.STEEL_FACE, look),
                Area.edged(outer.grown(-wall).corners(), Material.CLEAR, look.as(LineKind.THIN)));
    }
}
