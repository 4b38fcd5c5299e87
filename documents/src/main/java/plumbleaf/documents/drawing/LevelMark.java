package plumbleaf.documents.drawing;

import java.util.List;

/** A height: an open triangle standing on its point at the level, with the lettering on a short line above. */
public record LevelMark(Point level, boolean toRight, String text, Look look) implements Mark {
    @Override
    public List<Primitive> drawn(Scale scale) {
        double half = scale.real(0.05);
        double high = scale.real(0.09);
        double way = toRight ? 1 : -1;
        double wide = Lettering.width(text, Text.SMALL, Text.Weight.REGULAR);
        Point top = level.plus(0, high);
        return List.of(
                Stroke.outline(List.of(level, level.plus(half, high), level.plus(-half, high)), look),
                Stroke.line(top, top.plus(way * scale.real(wide + 0.1), 0), look),
                Text.small(top.plus(way * scale.real(0.08), scale.real(0.035)), text)
                        .anchored(toRight ? Text.Across.START : Text.Across.END, Text.Up.BASELINE)
                        .with(look));
    }
}
