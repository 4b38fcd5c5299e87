package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Spread;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.sag.GateSag;

/**
 * The sag budget as one bar: what the latch corner loses by cause when the blocks are pulled, then what comes after hanging. Latch and
 * eye judge only what comes after, so their limits are measured from where it begins.
 */
public final class SagBar {
    private static final double BAR_IN = 0.36;

    /** From one line of words over the bar to the next. */
    private static final double ROW_IN = 0.17;

    private SagBar() {}

    /**
     * A limit of what comes after hanging, as a line across the bar.
     *
     * @param words what it limits: {@code seen by eye}, {@code latch still meets}, {@code drags}
     */
    public record Limit(String words, Length at) {}

    private record Piece(String words, double inches, Material material) {}

    public static Drawing of(String gate, GateSag sag, List<Limit> limits, double wideIn, DisplayUnits units) {
        List<Piece> pieces = List.of(
                new Piece("leaf", sag.byCause().leaf().inches(), Material.STEEL_FACE),
                new Piece("hinges give", sag.byCause().hingeFlex().inches(), Material.SHADE),
                new Piece("hinge play", sag.byCause().hingeSlack().inches(), Material.CLEAR),
                new Piece("post bends", sag.byCause().post().inches(), Material.WOOD),
                new Piece("footing turns", sag.byCause().footing().inches(), Material.CONCRETE),
                new Piece("later, in years", sag.byTime().afterHanging().total().inches(), Material.SOIL));
        double whole =
                pieces.stream().mapToDouble(piece -> Math.max(0, piece.inches)).sum();
        double hung = whole - Math.max(0, pieces.get(pieces.size() - 1).inches);
        double most = Math.max(
                whole,
                hung
                        + limits.stream()
                                .mapToDouble(limit -> limit.at.inches())
                                .max()
                                .orElse(0));
        double perInch = wideIn * 0.97 / Math.max(most, 1e-6);
        List<Mark> marks = new ArrayList<>();
        List<Double> middles = new ArrayList<>();
        List<Double> widths = new ArrayList<>();
        List<String> first = new ArrayList<>();
        List<String> second = new ArrayList<>();
        double x = 0;
        for (Piece piece : pieces) {
            double wide = Math.max(0, piece.inches) * perInch;
            if (wide > 1e-4)
                marks.add(Area.edged(
                        new Box(x, 0, x + wide, BAR_IN).corners(),
                        piece.material,
                        Look.thin(Layer.CHART).of(gate)));
            middles.add(x + wide / 2);
            first.add(piece.words);
            second.add(units.movement(piece.inches));
            widths.add(Math.max(
                    Lettering.width(piece.words, Text.SMALL, Text.Weight.REGULAR),
                    Lettering.width(units.movement(piece.inches), Text.SMALL, Text.Weight.REGULAR)));
            x += wide;
        }
        List<Double> places = Spread.within(middles, widths, 0.12, 0, wideIn);
        for (int i = 0; i < places.size(); i++) {
            marks.add(Stroke.through(
                    List.of(
                            new Point(middles.get(i), -0.02),
                            new Point(middles.get(i), -0.08),
                            new Point(places.get(i), -0.2)),
                    hair()));
            marks.add(Text.small(new Point(places.get(i), -0.29), first.get(i)).centred());
            marks.add(Text.small(new Point(places.get(i), -0.44), second.get(i))
                    .centred()
                    .bold());
        }
        limits(marks, limits, hung, perInch, units);
        marks.add(Text.small(new Point(0, BAR_IN + 0.07), "when the blocks are pulled " + units.movement(hung)));
        return Drawing.of("Gate " + gate + ", sag budget", Scale.FULL, marks);
    }

    private static void limits(List<Mark> marks, List<Limit> limits, double hung, double perInch, DisplayUnits units) {
        List<Limit> sorted = new ArrayList<>(limits);
        sorted.sort(java.util.Comparator.comparingDouble(limit -> limit.at.inches()));
        // Words left of their line stand the lower the further left it is, words right of it the higher: so none stands
        // over another's line.
        double low = BAR_IN + 0.36;
        double high = low + ROW_IN * (sorted.size() + 1);
        for (Limit limit : sorted) {
            double at = (hung + limit.at.inches()) * perInch;
            String words = "limit after hanging: " + limit.words + " " + units.movement(limit.at.inches());
            boolean left = at > Lettering.width(words, Text.SMALL, Text.Weight.REGULAR) + 0.1;
            double row = left ? (low += ROW_IN) : (high -= ROW_IN);
            marks.add(Stroke.line(
                    new Point(at, -0.03), new Point(at, row), new Look(Layer.CHART, LineKind.VISIBLE, Ink.INK, "")));
            marks.add(Text.small(new Point(at + (left ? -0.06 : 0.06), row - 0.03), words)
                    .anchored(left ? Text.Across.END : Text.Across.START, Text.Up.TOP)
                    .clearing());
        }
    }

    private static Look hair() {
        return new Look(Layer.CHART, LineKind.DIMENSION, Ink.SECOND, "");
    }
}
