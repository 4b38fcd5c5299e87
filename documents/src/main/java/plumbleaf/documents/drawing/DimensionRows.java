package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Dimensions along one side of a drawing, stacked in rows: the shortest nearest, none over another. */
public final class DimensionRows {
    /** Where the rows lie. */
    public enum Side {
        BELOW,
        ABOVE,
        LEFT,
        RIGHT
    }

    private static final double ROW_IN = 0.26;
    private static final double CLEAR_IN = 0.06;

    private final Side side;
    private final double firstRowAt;
    private final Scale scale;
    private final List<Entry> entries = new ArrayList<>();

    private record Entry(Point from, Point to, String text, String of) {}

    private record Taken(double from, double to) {
        boolean overlaps(Taken other) {
            return from < other.to && other.from < to;
        }
    }

    private record Placed(LinearDimension dimension, int row) {}

    /** The first row's line lies at x or y, as the side wants; each further one a row's height outwards. */
    public DimensionRows(Side side, double firstRowAt, Scale scale) {
        this.side = side;
        this.firstRowAt = firstRowAt;
        this.scale = scale;
    }

    public DimensionRows add(Point from, Point to, String text, String of) {
        boolean swap = along(to) < along(from);
        entries.add(swap ? new Entry(to, from, text, of) : new Entry(from, to, text, of));
        return this;
    }

    private boolean level() {
        return side == Side.BELOW || side == Side.ABOVE;
    }

    private double along(Point place) {
        return level() ? place.x() : place.y();
    }

    private double outward() {
        return side == Side.BELOW || side == Side.LEFT ? -1 : 1;
    }

    public List<Mark> marks() {
        return placed().stream().<Mark>map(Placed::dimension).toList();
    }

    /** Where the outermost row lies, lettering included: room for what comes next starts there. */
    public double outerEdge() {
        int rows = placed().stream().mapToInt(placed -> placed.row + 1).max().orElse(0);
        return firstRowAt + outward() * scale.real(rows * ROW_IN);
    }

    private List<Placed> placed() {
        List<Entry> sorted = new ArrayList<>(entries);
        sorted.sort(Comparator.comparingDouble((Entry entry) -> along(entry.to) - along(entry.from))
                .thenComparingDouble(entry -> along(entry.from))
                .thenComparing(Entry::text));
        List<List<Taken>> rows = new ArrayList<>();
        List<Placed> placed = new ArrayList<>();
        for (Entry entry : sorted) placed.add(place(entry, rows));
        return placed;
    }

    private Placed place(Entry entry, List<List<Taken>> rows) {
        for (int row = 0; ; row++) {
            if (row == rows.size()) rows.add(new ArrayList<>());
            for (LinearDimension.Overflow overflow : LinearDimension.Overflow.values()) {
                Taken needs = needs(entry, overflow);
                boolean free = rows.get(row).stream().noneMatch(needs::overlaps);
                boolean uncrossed = uncrossed(entry, rows.subList(0, row));
                if (free && (uncrossed || overflow == LinearDimension.Overflow.AFTER)) {
                    rows.get(row).add(needs);
                    return new Placed(dimension(entry, row, overflow), row);
                }
            }
        }
    }

    private boolean uncrossed(Entry entry, List<List<Taken>> inner) {
        return inner.stream()
                .flatMap(List::stream)
                .noneMatch(taken -> strictlyIn(taken, along(entry.from)) || strictlyIn(taken, along(entry.to)));
    }

    private boolean strictlyIn(Taken taken, double place) {
        double margin = scale.real(CLEAR_IN);
        return place > taken.from + margin && place < taken.to - margin;
    }

    private Taken needs(Entry entry, LinearDimension.Overflow overflow) {
        double clear = scale.real(CLEAR_IN);
        double from = along(entry.from);
        double to = along(entry.to);
        double span = scale.paper(to - from);
        double wide = Lettering.width(entry.text, Text.SMALL, Text.Weight.REGULAR);
        if (LinearDimension.fits(entry.text, span)) return new Taken(from, to);
        double tail = scale.real(0.20) + clear;
        double shelf = wide + 0.05 <= span ? 0 : scale.real(wide + 0.06);
        return overflow == LinearDimension.Overflow.AFTER
                ? new Taken(from - tail, to + tail + shelf)
                : new Taken(from - tail - shelf, to + tail);
    }

    private LinearDimension dimension(Entry entry, int row, LinearDimension.Overflow overflow) {
        double line = firstRowAt + outward() * scale.real(row * ROW_IN);
        LinearDimension dimension = level()
                ? LinearDimension.level(entry.from, entry.to, line, entry.text)
                : LinearDimension.upright(entry.from, entry.to, line, entry.text);
        return dimension.overflowing(overflow).of(entry.of);
    }
}
