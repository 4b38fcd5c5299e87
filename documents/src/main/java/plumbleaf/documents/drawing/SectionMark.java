package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** Where a section is cut: heavy ends of a chain line, arrows in the direction looked, and the letter at both. */
public record SectionMark(Point from, Point to, double lookingRad, String letter, Look look) implements Mark {
    @Override
    public List<Primitive> drawn(Scale scale) {
        List<Primitive> marks = new ArrayList<>();
        double along = from.direction(to);
        double end = scale.real(0.22);
        marks.add(Stroke.line(from.towards(along, end), to.towards(along + Math.PI, end), look.as(LineKind.CENTRE)));
        for (Point place : List.of(from, to)) {
            double inward = place.equals(from) ? along : along + Math.PI;
            Point head = place.towards(lookingRad, scale.real(0.22));
            marks.add(Stroke.line(place, place.towards(inward, end), look.as(LineKind.HEAVY)));
            marks.add(Stroke.line(place, head, look.as(LineKind.THIN)));
            marks.add(Arrow.tip(head, lookingRad, scale, look));
            marks.add(Text.medium(place.towards(lookingRad, scale.real(0.34)), letter)
                    .centred()
                    .bold()
                    .with(look));
        }
        return List.copyOf(marks);
    }
}
