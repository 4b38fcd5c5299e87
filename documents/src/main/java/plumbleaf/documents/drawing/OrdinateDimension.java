package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * One distance from a common datum: a line from the feature to its lettering, with a jog where the lettering had to give way.
 *
 * @param feature   the place measured to
 * @param lettering where its lettering begins; level with the feature, or moved along the row
 * @param upright   true when heights are measured (lettering beside), false for distances along (lettering below, read from the right)
 */
public record OrdinateDimension(Point feature, Point lettering, boolean upright, String text, Look look)
        implements Mark {
    private static final double GAP_IN = 0.06;
    private static final double JOG_IN = 0.14;

    @Override
    public List<Primitive> drawn(Scale scale) {
        double side = upright ? Math.signum(lettering.x() - feature.x()) : Math.signum(lettering.y() - feature.y());
        double gap = scale.real(GAP_IN) * side;
        double jog = scale.real(JOG_IN) * side;
        double foot = scale.real(0.04) * side;
        List<Primitive> marks = new ArrayList<>();
        Text letters = Text.small(lettering, text).with(look).clearing();
        if (upright) {
            marks.add(Stroke.through(
                    List.of(
                            feature.plus(gap, 0),
                            new Point(lettering.x() - 2 * jog, feature.y()),
                            new Point(lettering.x() - jog, lettering.y()),
                            lettering.plus(-foot, 0)),
                    look));
            marks.add(letters.anchored(side > 0 ? Text.Across.START : Text.Across.END, Text.Up.MIDDLE));
        } else {
            marks.add(Stroke.through(
                    List.of(
                            feature.plus(0, gap),
                            new Point(feature.x(), lettering.y() - 2 * jog),
                            new Point(lettering.x(), lettering.y() - jog),
                            lettering.plus(0, -foot)),
                    look));
            marks.add(letters.anchored(side > 0 ? Text.Across.START : Text.Across.END, Text.Up.MIDDLE)
                    .turned(Math.PI / 2));
        }
        return List.copyOf(marks);
    }
}
