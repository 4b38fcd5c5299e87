package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** The mark of a joint in six corners, so that it is never taken for a member's ring, with a line to where the members meet. */
public record JointTag(Point middle, Point joint, String text, Look look) implements Mark {
    public static final double RADIUS_IN = 0.155;

    @Override
    public List<Primitive> drawn(Scale scale) {
        double radius = scale.real(RADIUS_IN);
        double way = middle.direction(joint);
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < 6; i++) corners.add(middle.towards(i * Math.PI / 3, radius));
        return List.of(
                Stroke.line(middle.towards(way, radius * 0.9), joint, look),
                new Fill(corners, look.in(Ink.PAPER)),
                Stroke.outline(corners, look.as(LineKind.THIN)),
                Text.small(middle, text).centred().with(look));
    }
}
