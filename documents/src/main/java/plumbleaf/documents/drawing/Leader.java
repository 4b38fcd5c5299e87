package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** A note beside a drawing with a line and arrow to what it is about. Lines of lettering run down from the first. */
public record Leader(Point target, Point note, List<String> lines, Look look) implements Mark {
    private static final double PITCH_IN = 0.155;
    private static final double SHELF_IN = 0.12;

    public Leader {
        lines = List.copyOf(lines);
    }

    @Override
    public List<Primitive> drawn(Scale scale) {
        boolean right = note.x() >= target.x();
        double shelf = scale.real(SHELF_IN) * (right ? -1 : 1);
        Point knee = note.plus(shelf, 0);
        List<Primitive> marks = new ArrayList<>();
        marks.add(Stroke.through(List.of(target, knee, note.plus(shelf * 0.3, 0)), look));
        marks.add(Arrow.tip(target, knee.direction(target), scale, look));
        for (int i = 0; i < lines.size(); i++)
            marks.add(Text.small(note.plus(0, -scale.real(i * PITCH_IN)), lines.get(i))
                    .anchored(right ? Text.Across.START : Text.Across.END, Text.Up.MIDDLE)
                    .clearing()
                    .with(look));
        return List.copyOf(marks);
    }
}
