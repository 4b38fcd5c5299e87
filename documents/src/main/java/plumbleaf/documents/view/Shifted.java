package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;

/** Marks of one view set into another. */
final class Shifted {
    private Shifted() {}

    static List<Mark> by(List<Mark> marks, double dx, double dy, Scale scale) {
        List<Mark> moved = new ArrayList<>();
        for (Mark mark : marks) {
            if (mark instanceof Area area)
                moved.add(new Area(
                        Stroke.outline(area.outline(), area.look())
                                .placed(1, dx, dy)
                                .points(),
                        area.material(),
                        area.edged(),
                        area.look()));
            else for (var part : mark.drawn(scale)) moved.add(part.placed(1, dx, dy));
        }
        return List.copyOf(moved);
    }
}
