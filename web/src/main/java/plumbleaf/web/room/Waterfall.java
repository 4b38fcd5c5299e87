package plumbleaf.web.room;

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
import plumbleaf.engine.pricing.Price;
import plumbleaf.engine.pricing.Step;

/**
 * Where each dollar of the total goes: each step begins where the one before it ended. What the contractor sets as a share has a grip at
 * the end of its bar.
 *
 * @param namesIn where the bars begin
 * @param perCent inches on the drawing for each cent
 */
record Waterfall(Price price, List<Step> steps, double namesIn, double perCent) {
    private static final double ROW_IN = 0.3;
    private static final double BAR_IN = 0.18;
    private static final double GRIP_IN = 0.28;
    private static final double FIGURES_IN = 0.95;

    static Waterfall of(Price price, double wideIn) {
        List<Step> steps = price.waterfall().stream()
                .filter(step -> !step.amount().isZero())
                .toList();
        double names = 0.4;
        for (Step step : steps)
            names = Math.max(names, Lettering.width(step.words(), Text.SMALL, Text.Weight.REGULAR) + 0.14);
        double total = Math.max(1, price.total().cents());
        return new Waterfall(price, steps, names, (wideIn - names - FIGURES_IN) / total);
    }

    /** How the drawing marks the grip of a step. */
    static String grip(String step) {
        return step + ".share";
    }

    /** @param gripped the steps that can be taken hold of */
    Drawing drawing(List<String> gripped) {
        List<Mark> marks = new ArrayList<>();
        double x = namesIn;
        double y = 0;
        for (Step step : steps) {
            double end = x + step.amount().cents() * perCent;
            boolean held = gripped.contains(step.key());
            marks.add(Text.small(new Point(namesIn - 0.1, y), step.words()).anchored(Text.Across.END, Text.Up.MIDDLE));
            marks.add(Area.edged(
                    new Box(Math.min(x, end), y - BAR_IN / 2, Math.max(x, end), y + BAR_IN / 2).corners(),
                    Material.STEEL_FACE,
                    Look.thin(Layer.CHART).in(Ink.INK).of(step.key())));
            if (held)
                marks.add(Stroke.line(
                        new Point(end, y - GRIP_IN / 2),
                        new Point(end, y + GRIP_IN / 2),
                        new Look(Layer.CHART, LineKind.HEAVY, Ink.CHALK, grip(step.key()))));
            marks.add(Text.small(
                            new Point(Math.max(x, end) + (held ? 0.11 : 0.07), y),
                            step.amount().text())
                    .anchored(Text.Across.START, Text.Up.MIDDLE));
            y -= ROW_IN;
            marks.add(Stroke.line(
                    new Point(end, y + ROW_IN - BAR_IN / 2),
                    new Point(end, y + BAR_IN / 2),
                    Look.thin(Layer.CHART).in(Ink.HAIR)));
            x = end;
        }
        marks.add(Text.small(new Point(namesIn - 0.1, y), "total")
                .anchored(Text.Across.END, Text.Up.MIDDLE)
                .bold());
        marks.add(Area.edged(
                new Box(namesIn, y - BAR_IN / 2, Math.max(x, namesIn), y + BAR_IN / 2).corners(),
                Material.STEEL,
                Look.thin(Layer.CHART).in(Ink.INK)));
        marks.add(Text.small(new Point(x + 0.07, y), price.total().text())
                .anchored(Text.Across.START, Text.Up.MIDDLE)
                .bold());
        return Drawing.of("Where each dollar goes", Scale.FULL, marks);
    }
}
