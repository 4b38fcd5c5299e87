package plumbleaf.documents.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Ordinates from one datum along one side of a drawing; lettering that would touch is spread along the row. */
public final class OrdinateRow {
    private static final double PITCH_IN = 0.17;

    private final boolean upright;
    private final double letteringAt;
    private final Scale scale;
    private final List<Entry> entries = new ArrayList<>();

    private record Entry(Point feature, String text, Look look) {}

    private OrdinateRow(boolean upright, double letteringAt, Scale scale) {
        this.upright = upright;
        this.letteringAt = letteringAt;
        this.scale = scale;
    }

    /** Heights, lettered in a column at x. */
    public static OrdinateRow heights(double letteringX, Scale scale) {
        return new OrdinateRow(true, letteringX, scale);
    }

    /** Distances along, lettered in a row at y. */
    public static OrdinateRow distances(double letteringY, Scale scale) {
        return new OrdinateRow(false, letteringY, scale);
    }

    /** Two features at the same distance take one lettering: the first one's. */
    public OrdinateRow add(Point feature, String text, String of) {
        boolean known = entries.stream()
                .anyMatch(entry ->
                        Math.abs(along(entry.feature) - along(feature)) < scale.real(0.01) && entry.text.equals(text));
        if (!known) entries.add(new Entry(feature, text, Look.dimension().of(of)));
        return this;
    }

    private double along(Point place) {
        return upright ? place.y() : place.x();
    }

    public List<Mark> marks() {
        List<Entry> sorted = new ArrayList<>(entries);
        sorted.sort(Comparator.comparingDouble(entry -> along(entry.feature)));
        List<Double> wanted = sorted.stream().map(entry -> along(entry.feature)).toList();
        List<Double> spread = Spread.apart(wanted, scale.real(PITCH_IN));
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            Entry entry = sorted.get(i);
            Point lettering = upright ? new Point(letteringAt, spread.get(i)) : new Point(spread.get(i), letteringAt);
            marks.add(new OrdinateDimension(entry.feature, lettering, upright, entry.text, entry.look));
        }
        return List.copyOf(marks);
    }
}
