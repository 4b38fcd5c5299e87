package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Stroke;

/** The ground cut through: a heavy line with a strip of soil under it. */
final class GroundLine {
    private GroundLine() {}

    /** Points from left to right. */
    static List<Mark> along(List<Point> surface, double stripReal) {
        List<Point> soil = new ArrayList<>(surface);
        for (int i = surface.size() - 1; i >= 0; i--) soil.add(surface.get(i).plus(0, -stripReal));
        Look look = Look.visible(Layer.GROUND).as(LineKind.HEAVY).of("ground");
        return List.of(Area.plain(soil, Material.SOIL, look), Stroke.through(surface, look));
    }
}
