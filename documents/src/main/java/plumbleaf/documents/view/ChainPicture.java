package plumbleaf.documents.view;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Arc;
import plumbleaf.documents.drawing.Drawing;
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

/** The load path as a chain hanging from the leaf: one ring a link, how far it is used, in which case; the weakest is drawn heavy and named. */
public final class ChainPicture {
    private static final double ROW_IN = 0.26;
    private static final double ROW_WITH_CASE_IN = 0.40;

    /** Rings reach into each other by this share of their size. */
    private static final double INTO = 0.25;

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
        double radius = row / 2 / (1 - INTO);
        LinkUse weakest = weakest(chain);
        double words = 2 * radius + 0.14;
        double y = 0;
        for (LinkUse link : chain) {
            boolean worst = link.equals(weakest);
            boolean over = link.utilisation() > 1;
            Ink ink = over ? Ink.MUST_FIX : Ink.INK;
            Look ring = new Look(Layer.CHART, worst ? LineKind.HEAVY : LineKind.VISIBLE, ink, link.part());
            marks.add(Arc.circle(new Point(radius, y), radius, ring));
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
        double foot = y + row - radius - 0.05;
        marks.add(Stroke.line(
                new Point(0, foot), new Point(2 * radius, foot), new Look(Layer.CHART, LineKind.HEAVY, Ink.INK, gate)));
        return Drawing.of("Load path of gate " + gate, Scale.FULL, marks);
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
