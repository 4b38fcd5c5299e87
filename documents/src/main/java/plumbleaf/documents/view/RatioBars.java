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
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.quantity.DecimalText;

/** Checks as bars against one limit line at 1: the load path from the weakest link on. Drawn on paper. */
public final class RatioBars {
    private static final double ROW_IN = 0.24;
    private static final double BAR_IN = 0.14;

    /** A bar as long as this is drawn at least; one that is longer than the other stops there, with its number beside it. */
    private static final double SHOWN_AT_LEAST = 1.6;

    private static final double SHOWN_MOST = 4;

    private RatioBars() {}

    /** One link: its words, how far it is used, what it belongs to. */
    public record Link(String words, double ratio, String of) {}

    public static Drawing of(String title, List<Link> links, double wideIn) {
        List<Mark> marks = new ArrayList<>();
        double names = 0.4;
        for (Link link : links)
            names = Math.max(names, Lettering.width(link.words, Text.SMALL, Text.Weight.REGULAR) + 0.12);
        double room = wideIn - names - 0.5;
        double most = Math.min(
                SHOWN_MOST,
                Math.max(
                        SHOWN_AT_LEAST,
                        links.stream().mapToDouble(Link::ratio).max().orElse(0)));
        double perOne = room / most;
        double y = 0;
        for (Link link : links) {
            double value = Math.min(Math.max(link.ratio, 0), most);
            boolean over = link.ratio > 1;
            Look look = Look.thin(Layer.CHART).in(over ? Ink.MUST_FIX : Ink.INK).of(link.of);
            marks.add(Text.small(new Point(names - 0.1, y), link.words)
                    .anchored(Text.Across.END, Text.Up.MIDDLE)
                    .of(link.of));
            if (value > 1e-4)
                marks.add(Area.edged(
                        new Box(names, y - BAR_IN / 2, names + value * perOne, y + BAR_IN / 2).corners(),
                        over ? Material.STEEL : Material.STEEL_FACE,
                        look));
            Text number = Text.small(new Point(names + value * perOne + 0.06, y), DecimalText.fixed(link.ratio, 2))
                    .anchored(Text.Across.START, Text.Up.MIDDLE)
                    .clearing()
                    .with(Look.note().of(link.of));
            marks.add(over ? number.bold() : number);
            y -= ROW_IN;
        }
        double limit = names + perOne;
        marks.add(Stroke.line(
                new Point(limit, ROW_IN * 0.7),
                new Point(limit, y + ROW_IN * 0.3),
                new Look(Layer.CHART, LineKind.VISIBLE, Ink.INK, "")));
        marks.add(Text.small(new Point(limit, ROW_IN * 0.8), "limit 1.00")
                .anchored(Text.Across.MIDDLE, Text.Up.BASELINE));
        return Drawing.of(title, Scale.FULL, marks);
    }
}
