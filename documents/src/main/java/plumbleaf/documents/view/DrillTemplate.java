package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Labels;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.gate.Hole;
import plumbleaf.engine.gate.Member;
import plumbleaf.engine.gate.MemberRole;
import plumbleaf.engine.quantity.DisplayUnits;

/**
 * The face of a member that is drilled to a pattern, at full size, in tiles that a page holds. Stations run from the long point of its first
 * end; neighbors join at match marks. The first tile hooks over the end; a later one is there only where it has a pattern, and its match
 * mark is found by tape. A hole that stands alone is quicker marked from the drill list.
 */
public final class DrillTemplate {
    private static final double TILE_IN = 9;
    private static final double TILE_MM = 225;
    /** A hole whose hinge is not chosen has its center punched only. */
    private static final double NO_HOLE_IN = 1.0 / 8;

    /** Nearer than this, no tile ends beside a hole. */
    private static final double CLEAR_IN = 0.9;

    private static final double ROOM_FOR_WORDS_IN = 0.95;
    /** So high over the strip's lower edge both lines of words reach. */
    private static final double WORDS_HIGH_IN = 0.42;

    /** What the words at a tile's other end take. */
    private static final double BESIDE_IN = 1.9;

    /** Holes nearer than this are drilled from one sheet. */
    private static final double TOGETHER_IN = 3;

    private static final double BEYOND_IN = 0.22;

    /** So far words keep from the line beside them. */
    private static final double BESIDE_LINE_IN = 0.14;

    private final GateSubject gate;
    private final Member member;
    private final List<Point> face;
    private final double half;
    private final double tile;

    private DrillTemplate(GateSubject gate, Member member) {
        this.gate = gate;
        this.member = member;
        this.face = laid(gate, member);
        this.half = member.section().depth().inches() / 2;
        this.tile = gate.units() == DisplayUnits.US ? TILE_IN : TILE_MM / 25.4;
    }

    /** The tiles of every drilled member of the leaf, in the order of the cut list. */
    public static List<Drawing> of(GateSubject gate) {
        List<Drawing> tiles = new ArrayList<>();
        for (Member member : gate.leaf().members())
            if (!new DrillTemplate(gate, member).groups().isEmpty())
                tiles.addAll(new DrillTemplate(gate, member).tiles());
        return List.copyOf(tiles);
    }

    /** The member's outline as seen from outside, turned so that it runs to the right from the long point of its first end. */
    private static List<Point> laid(GateSubject gate, Member member) {
        List<Point> seen =
                MemberShapes.seen(new MemberShapes(gate.leaf(), gate.parts().joint()).of(member), gate.outside());
        Point from = gate.outside().at(member.from());
        double turn = -from.direction(gate.outside().at(member.to()));
        List<Point> turned = seen.stream()
                .map(point -> point.rotatedAbout(from, turn).plus(-from.x(), -from.y()))
                .toList();
        Box box = Box.around(turned);
        return turned.stream()
                .map(point -> point.plus(-box.minX(), -box.centre().y()))
                .toList();
    }

    /** A piece of the member between two stations; joined where it begins at the end of the tile before. */
    private record Tile(double from, double to, boolean joined, List<Hole> holes) {}

    private List<Drawing> tiles() {
        List<Tile> tiles = cut();
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < tiles.size(); i++) drawings.add(drawn(tiles.get(i), i, tiles.size()));
        return drawings;
    }

    /** Tiles that begin and end on whole steps of the tape and never in or beside a group of holes that belong together. */
    private List<Tile> cut() {
        double length = member.longPoint().inches();
        List<List<Hole>> groups = groups();
        List<Tile> tiles = new ArrayList<>();
        double end = 0;
        int next = 0;
        while (next < groups.size() || tiles.isEmpty()) {
            double start = end;
            boolean joined = !tiles.isEmpty();
            if (joined && last(groups.get(next)) + CLEAR_IN - end > tile) {
                start = onStep(first(groups.get(next)) - 2 * CLEAR_IN);
                joined = false;
            }
            end = Math.min(start + tile, length);
            List<Hole> within = new ArrayList<>();
            while (next < groups.size() && last(groups.get(next)) + CLEAR_IN <= end + 1e-9 - roomForEnd(end, length))
                within.addAll(groups.get(next++));
            if (next < groups.size() && first(groups.get(next)) - CLEAR_IN < end) {
                double before = onStep(first(groups.get(next)) - CLEAR_IN);
                if (before > start + CLEAR_IN) end = before;
                else within.addAll(groups.get(next++));
            }
            tiles.add(new Tile(start, end, joined, List.copyOf(within)));
        }
        return tiles;
    }

    /** A hole may be as near the member's own end as it likes. */
    private static double roomForEnd(double end, double length) {
        return end >= length - 1e-9 ? -CLEAR_IN : 0;
    }

    private List<List<Hole>> groups() {
        List<Hole> along = new ArrayList<>(member.holes());
        along.sort(Comparator.comparingDouble(hole -> hole.fromDatum().inches()));
        List<List<Hole>> groups = new ArrayList<>();
        for (Hole hole : along) {
            boolean near =
                    !groups.isEmpty() && hole.fromDatum().inches() - last(groups.get(groups.size() - 1)) <= TOGETHER_IN;
            if (!near) groups.add(new ArrayList<>());
            groups.get(groups.size() - 1).add(hole);
        }
        groups.removeIf(group -> group.size() < 2);
        return groups;
    }

    private static double first(List<Hole> group) {
        return group.get(0).fromDatum().inches();
    }

    private static double last(List<Hole> group) {
        return group.get(group.size() - 1).fromDatum().inches();
    }

    private double onStep(double inches) {
        double step = gate.units() == DisplayUnits.US ? 1 : 25 / 25.4;
        return Math.max(0, Math.floor(inches / step + 1e-9) * step);
    }

    private Drawing drawn(Tile is, int number, int count) {
        List<Mark> marks = new ArrayList<>();
        outline(marks, is.from(), is.to());
        Labels labels = new Labels(Scale.FULL);
        labels.keepFree(new Box(-1, -half - 1, tile + 1, half + 0.06));
        for (Hole hole : is.holes()) hole(marks, labels, hole, is.from());
        if (is.from() > 1e-9)
            match(marks, is, is.from(), is.joined() ? "joins the tile before, at " : "set by tape at ", true);
        if (is.to() < member.longPoint().inches() - 1e-6) match(marks, is, is.to(), "match at ", false);
        words(marks, number, count, is);
        Box frame = new Box(
                -0.1, Math.min(-half - BEYOND_IN, low()) - 0.08, tile + 0.1, Math.max(half + 0.5, top(marks) + 0.05));
        return Drawing.of(name(), Scale.FULL, marks).framed(frame);
    }

    /** Where the lowest words stand: within the face of a wide tube clear of any hole, else under it. */
    private double low() {
        return half >= ROOM_FOR_WORDS_IN ? -half + 0.10 : -half - 0.54;
    }

    private static double top(List<Mark> marks) {
        double top = -1e9;
        for (Mark mark : marks)
            for (var part : mark.drawn(Scale.FULL))
                top = Math.max(top, part.extents(Scale.FULL).maxY());
        return top;
    }

    private String name() {
        return gate.leaf().id() + " mark " + tail(member.id());
    }

    private static String tail(String id) {
        String last = id.substring(id.lastIndexOf('.') + 1);
        return last.startsWith("m") ? last.substring(1) : last;
    }

    /** The face between two stations, its edges drawn, the cuts of the tile left open. */
    private void outline(List<Mark> marks, double from, double to) {
        List<Point> part = Clip.within(face, new Box(from, -half - 1, to, half + 1).corners());
        Look look = Look.visible(Layer.MEMBERS).of(member.id());
        for (int i = 0; i < part.size(); i++) {
            Point one = part.get(i);
            Point other = part.get((i + 1) % part.size());
            if (isSeam(one, other, from) || isSeam(one, other, to) || one.distance(other) < 1e-9) continue;
            marks.add(Stroke.line(one.plus(-from, 0), other.plus(-from, 0), look));
        }
        marks.add(Stroke.line(new Point(0, 0), new Point(to - from, 0), Look.centre(Layer.MEMBERS)));
    }

    private boolean isSeam(Point one, Point other, double station) {
        boolean within = station > 1e-6 && station < member.longPoint().inches() - 1e-6;
        return within && Math.abs(one.x() - station) < 1e-6 && Math.abs(other.x() - station) < 1e-6;
    }

    private void hole(List<Mark> marks, Labels labels, Hole hole, double from) {
        Point at = new Point(hole.fromDatum().inches() - from, 0);
        double wide = hole.diameter().value().map(size -> size.inches()).orElse(NO_HOLE_IN);
        Look look = Look.visible(Layer.HARDWARE).of(member.id());
        marks.add(Arc.circle(at, wide / 2, look));
        double arm = wide / 2 + 0.16;
        marks.add(Stroke.line(at.plus(-arm, 0), at.plus(arm, 0), look.as(LineKind.THIN)));
        marks.add(Stroke.line(at.plus(0, -arm), at.plus(0, half + 0.05), look.as(LineKind.THIN)));
        String size = hole.diameter()
                .value()
                .map(is -> Sizes.inches(gate.units(), is.inches()))
                .orElse("from the hinge");
        marks.addAll(labels.beside(
                at.plus(0, half),
                List.of(
                        hole.what() + ", \u2300" + size,
                        gate.length(hole.fromDatum().inches()) + " from first end"),
                Math.PI / 2,
                Look.note().of(member.id())));
    }

    /** A line across with a half diamond on each edge: two sheets are right when both make whole ones. */
    private void match(List<Mark> marks, Tile is, double station, String words, boolean toRight) {
        double x = station - is.from();
        double way = toRight ? 1 : -1;
        Look look = Look.thin(Layer.SHEET);
        marks.add(Stroke.line(
                new Point(x, -half - BEYOND_IN), new Point(x, half + BEYOND_IN), look.as(LineKind.PHANTOM)));
        for (double y : new double[] {half, -half})
            marks.add(new Fill(
                    List.of(new Point(x, y - 0.09), new Point(x + way * 0.09, y), new Point(x, y + 0.09)), look));
        marks.add(Text.small(
                        new Point(toRight ? firstOfWords(is) : lastOfWords(is), low() + 0.20),
                        words + gate.length(station))
                .anchored(toRight ? Text.Across.START : Text.Across.END, Text.Up.BASELINE)
                .with(Look.note()));
    }

    private void words(List<Mark> marks, int number, int count, Tile is) {
        String what = name() + ", " + member.role().words() + ", tile " + (number + 1) + " of " + count;
        String hook = "long point of the " + firstEnd() + " end: hook over here";
        double longest = Math.max(
                Lettering.width(what, Text.SMALL, Text.Weight.SEMIBOLD),
                Lettering.width(hook, Text.SMALL, Text.Weight.REGULAR));
        double x = Math.max(BESIDE_LINE_IN, Math.min(firstOfWords(is), lastOfWords(is) - longest - BESIDE_IN));
        marks.add(Text.small(new Point(x, low()), what).bold().with(Look.note()));
        marks.add(Text.small(new Point(lastOfWords(is), low()), edge())
                .anchored(Text.Across.END, Text.Up.BASELINE)
                .with(Look.note()));
        if (number > 0) return;
        marks.add(Text.small(new Point(x, low() + 0.20), hook).with(Look.note()));
    }

    /** Beside the slanted cut, which no lettering may hide or be hidden by; words below the strip are clear of it. */
    private double firstOfWords(Tile is) {
        double cut = half < ROOM_FOR_WORDS_IN ? 0 : Math.max(end(-half, true), end(WORDS_HIGH_IN - half, true));
        return Math.max(0, cut - is.from()) + BESIDE_LINE_IN;
    }

    private double lastOfWords(Tile is) {
        double cut = half < ROOM_FOR_WORDS_IN ? is.to() : Math.min(end(-half, false), end(WORDS_HIGH_IN - half, false));
        return Math.min(is.to(), cut) - is.from() - BESIDE_LINE_IN;
    }

    /** The station where the face begins at a height, or where it ends: a slant leans either way, by which edge is the long one. */
    private double end(double y, boolean first) {
        double length = member.longPoint().inches();
        Box sliver = new Box(-1, y - 0.001, length + 1, y + 0.001);
        DoubleStream along = Clip.within(face, sliver.corners()).stream().mapToDouble(Point::x);
        return first ? along.min().orElse(0) : along.max().orElse(length);
    }

    /** What the lower edge on the paper is on the leaf. */
    private String edge() {
        return switch (member.role()) {
            case HINGE_STILE, LATCH_STILE ->
                "edge below this: " + ((gate.outside().rightward() > 0) ? "latch" : "hinge") + " side";
            default -> "edge below this: " + (isUpside() ? "up" : "down");
        };
    }

    /** Whether the paper's lower edge is the member's upper one: where it runs to the left on the drawing. */
    private boolean isUpside() {
        return gate.outside().rightward() < 0;
    }

    private String firstEnd() {
        boolean stile = member.role() == MemberRole.HINGE_STILE || member.role() == MemberRole.LATCH_STILE;
        return stile ? "lower" : "hinge";
    }
}
