package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.design.LinkUse;
import plumbleaf.engine.quantity.DecimalText;

/** The load path as a chain hanging from the leaf: one link of it a link of the path, how far it is used, in which case; the weakest is drawn heavy and named. */
public final class ChainPicture {
    private static final double ROW_IN = 0.26;
    private static final double ROW_WITH_CASE_IN = 0.40;

    /** Links reach into each other by this share of their length. */
    private static final double INTO = 0.25;

    /** Of its length, how wide a link is seen from the front, and on its edge: each hangs in the next a quarter turned, as in any chain. */
    private static final double FRONT = 0.5;

    private static final double EDGE = 0.15;

    private static final int ROUND = 12;

    private static final double LINE_IN = 0.145;

    private ChainPicture() {}

    /**
     * @param chain in the order of the walk
     * @param wideIn room on the paper
     * @param cases whether each link's case is written under it
     */
    public static Drawing of(String gate, List<LinkUse> chain, double wideIn, boolean cases) {
        List<Mark> marks = new ArrayList<>();
        double row = cases ? ROW_WITH_CASE_IN : ROW_IN;
        double high = row / (1 - INTO);
        LinkUse weakest = weakest(chain);
        double words = FRONT * high + 0.14;
        List<Mark> onEdge = new ArrayList<>();
        double y = 0;
        for (int i = 0; i < chain.size(); i++) {
            LinkUse link = chain.get(i);
            boolean worst = link.equals(weakest);
            boolean over = link.utilisation() > 1;
            Ink ink = over ? Ink.MUST_FIX : Ink.INK;
            Look ring = new Look(Layer.CHART, worst ? LineKind.HEAVY : LineKind.VISIBLE, ink, link.part());
            Point middle = new Point(FRONT * high / 2, y);
            if (i % 2 == 0) marks.add(Stroke.outline(outline(middle, FRONT * high, high), ring));
            else {
                List<Point> outline = outline(middle, EDGE * high, high);
                onEdge.add(Fill.of(outline, Layer.CHART, Ink.PAPER));
                onEdge.add(Stroke.outline(outline, ring));
            }
            double first = cases ? y + LINE_IN / 2 : y;
            Text name = Text.small(new Point(words, first), words(link) + (worst ? ", weakest" : ""))
                    .anchored(Text.Across.START, Text.Up.MIDDLE)
                    .of(link.part());
            marks.add(worst ? name.bold() : name);
            Text ratio = Text.small(new Point(wideIn, first), DecimalText.fixed(link.utilisation(), 2))
                    .anchored(Text.Across.END, Text.Up.MIDDLE)
                    .with(new Look(Layer.CHART, LineKind.THIN, ink, link.part()));
            marks.add(worst || over ? ratio.bold() : ratio);
            if (cases)
                marks.add(Text.small(new Point(words, y - LINE_IN / 2), link.inCase())
                        .anchored(Text.Across.START, Text.Up.MIDDLE)
                        .with(Look.note().of(link.part())));
            y -= row;
        }
        marks.addAll(onEdge);
        double foot = y + row - high / 2 - 0.05;
        marks.add(Stroke.line(
                new Point(0, foot),
                new Point(FRONT * high, foot),
                new Look(Layer.CHART, LineKind.HEAVY, Ink.INK, gate)));
        return Drawing.of("Load path of gate " + gate, Scale.FULL, marks);
    }

    /** Straight sides and round ends. */
    private static List<Point> outline(Point middle, double wide, double high) {
        double radius = wide / 2;
        double straight = high / 2 - radius;
        List<Point> points = new ArrayList<>();
        for (int end = 0; end < 2; end++) {
            for (int i = 0; i <= ROUND; i++) {
                double angle = StrictMath.PI * (end + (double) i / ROUND);
                double up = end == 0 ? straight : -straight;
                points.add(new Point(
                        middle.x() + radius * StrictMath.cos(angle), middle.y() + up + radius * StrictMath.sin(angle)));
            }
        }
        return points;
    }

    private static String words(LinkUse link) {
        return link.link() + " " + link.part();
    }

    private static LinkUse weakest(List<LinkUse> chain) {
        LinkUse weakest = chain.get(0);
        for (LinkUse link : chain) if (link.utilisation() > weakest.utilisation()) weakest = link;
        return weakest;
    }
}
