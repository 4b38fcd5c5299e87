package plumbleaf.documents.view;

import java.util.List;
import plumbleaf.documents.drawing.Point;
import plumbleaf.engine.gate.Outline;
import plumbleaf.engine.gate.Picket;

/** The outline of a picket in its leaf's plane, x along r: lower hinge, lower latch, upper latch, upper hinge corner. */
final class PicketShape {
    private PicketShape() {}

    static List<Point> of(Picket picket, Outline outline) {
        double from = picket.r().inches();
        double to = from + picket.width().inches();
        double rakeBottom = outline.bottom().ratio();
        double rakeTop = picket.lying() ? rakeBottom : topRise(picket, outline);
        double middle = (from + to) / 2;
        double bottomMiddle = picket.middle().inches() - picket.length().inches() / 2;
        double topMiddle = bottomMiddle + picket.length().inches();
        return List.of(
                new Point(from, bottomMiddle - rakeBottom * (middle - from)),
                new Point(to, bottomMiddle + rakeBottom * (to - middle)),
                new Point(to, topMiddle + rakeTop * (to - middle)),
                new Point(from, topMiddle - rakeTop * (middle - from)));
    }

    /** Slope of its top: of the curve over its own width, or of the frame. */
    private static double topRise(Picket picket, Outline outline) {
        if (!outline.crest().isCurved()) return outline.top().ratio();
        double from = picket.r().inches();
        double width = picket.width().inches();
        boolean reaches =
                picket.middle().inches() + picket.length().inches() / 2 > outline.crestIn(from + width / 2) - 0.01;
        return reaches
                ? (outline.crestIn(from + width) - outline.crestIn(from)) / width
                : outline.top().ratio();
    }
}
