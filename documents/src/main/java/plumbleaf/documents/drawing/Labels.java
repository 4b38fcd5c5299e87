package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.List;

/** Finds room for lettering beside the things it names, so that no two labels touch. Remembers all it has placed or been told of. */
public final class Labels {
    private static final double[] REACHES_IN = {0.10, 0.22, 0.38, 0.58, 0.82, 1.1, 1.5, 2.0, 2.6, 3.3};
    private static final int DIRECTIONS = 12;
    private static final double LEADER_FROM_IN = 0.3;
    private static final double CLEAR_IN = 0.03;
    /** So far apart a thin line is looked along. */
    private static final double LOOK_IN = 0.05;

    private final Scale scale;
    private final List<Box> taken = new ArrayList<>();
    /** Where lettering stands, which no thin line may strike through. */
    private final List<Box> lettered = new ArrayList<>();

    public Labels(Scale scale) {
        this.scale = scale;
    }

    /** Room that no label may cover. */
    public Labels keepFree(Box real) {
        taken.add(real);
        return this;
    }

    /** Keeps the room of everything drawn so far that is lettering or a symbol. */
    public Labels keepFreeText(List<? extends Mark> marks) {
        for (Mark mark : marks)
            for (Primitive part : mark.drawn(scale)) if (part instanceof Text) letter(part.extents(scale));
        return this;
    }

    private void letter(Box box) {
        taken.add(box);
        lettered.add(box);
    }

    /** Whether none of the lettering of a mark would cover what is placed. */
    public boolean isFree(Mark mark) {
        for (Primitive part : mark.drawn(scale)) if (part instanceof Text && !free(part.extents(scale))) return false;
        return true;
    }

    /** Keeps lines free, as boxes along them. */
    public Labels keepFreeLine(Point from, Point to) {
        int parts = (int) Math.min(400, Math.max(1, Math.ceil(from.distance(to) / scale.real(0.12))));
        for (int i = 0; i < parts; i++)
            taken.add(Box.of(from.shareOf((double) i / parts, to), from.shareOf((i + 1.0) / parts, to))
                    .grown(scale.real(0.012)));
        return this;
    }

    /** A label beside a place, first tried in the wanted direction, then round about and farther off, with a thin line when far. */
    public List<Mark> beside(Point place, String text, double wantedRad, Look look) {
        return beside(place, List.of(text), wantedRad, look);
    }

    /** As above, with lines one under another. */
    public List<Mark> beside(Point place, List<String> lines, double wantedRad, Look look) {
        double wide = 0;
        for (String line : lines) wide = Math.max(wide, Lettering.width(line, Text.SMALL, Text.Weight.REGULAR));
        double pitch = 0.155;
        double high = Text.SMALL * (Lettering.ASCENT + Lettering.DESCENT) + pitch * (lines.size() - 1);
        for (boolean anyLeader : new boolean[] {false, true})
            for (double reach : REACHES_IN) {
                for (int turn = 0; turn < DIRECTIONS; turn++) {
                    int step = (turn + 1) / 2 * (turn % 2 == 0 ? 1 : -1);
                    double way = wantedRad + step * 2 * Math.PI / DIRECTIONS;
                    Box box = boxAt(place, way, reach, wide, high);
                    if (free(box)
                            && (anyLeader || reach < LEADER_FROM_IN || missesLettering(place, nearest(place, box))))
                        return placed(place, box, reach, lines, pitch, look);
                }
            }
        return placed(place, boxAt(place, wantedRad, REACHES_IN[0], wide, high), 0, lines, pitch, look);
    }

    private Box boxAt(Point place, double way, double reach, double wide, double high) {
        double cos = StrictMath.cos(way);
        double sin = StrictMath.sin(way);
        double halfWide = scale.real(wide / 2);
        double halfHigh = scale.real(high / 2);
        Point middle = place.plus(
                cos * scale.real(reach) + Math.max(-1, Math.min(1, cos * 1.6)) * halfWide,
                sin * scale.real(reach) + Math.max(-1, Math.min(1, sin * 1.6)) * halfHigh);
        return new Box(middle.x() - halfWide, middle.y() - halfHigh, middle.x() + halfWide, middle.y() + halfHigh);
    }

    private boolean free(Box box) {
        Box wanted = box.grown(scale.real(CLEAR_IN));
        return taken.stream().noneMatch(wanted::overlaps);
    }

    private boolean missesLettering(Point from, Point to) {
        int parts = (int) Math.max(1, Math.ceil(from.distance(to) / scale.real(LOOK_IN)));
        for (int i = 0; i <= parts; i++) {
            Point at = from.shareOf((double) i / parts, to);
            Box spot = Box.of(at, at).grown(scale.real(LOOK_IN / 2));
            if (lettered.stream().anyMatch(spot::overlaps)) return false;
        }
        return true;
    }

    private static Point nearest(Point place, Box box) {
        return new Point(
                Math.max(box.minX(), Math.min(box.maxX(), place.x())),
                Math.max(box.minY(), Math.min(box.maxY(), place.y())));
    }

    private List<Mark> placed(Point place, Box box, double reach, List<String> lines, double pitch, Look look) {
        letter(box);
        List<Mark> marks = new ArrayList<>();
        double first = box.maxY() - scale.real(Text.SMALL * Lettering.ASCENT);
        for (int i = 0; i < lines.size(); i++)
            marks.add(Text.small(new Point(box.centre().x(), first - scale.real(i * pitch)), lines.get(i))
                    .anchored(Text.Across.MIDDLE, Text.Up.BASELINE)
                    .clearing()
                    .with(look));
        if (reach >= LEADER_FROM_IN) {
            Point end = nearest(place, box);
            keepFreeLine(place, end);
            marks.add(Stroke.line(place, end, look.as(LineKind.DIMENSION)));
        }
        return marks;
    }
}
