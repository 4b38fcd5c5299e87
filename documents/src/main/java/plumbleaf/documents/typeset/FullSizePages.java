package plumbleaf.documents.typeset;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.paper.Paper;

/**
 * Pieces at full size on pages laid across, each page with a bar both ways that must measure what it says before anybody marks steel from
 * it: a printer that shrinks one way shrinks the other differently.
 */
public final class FullSizePages {
    private static final double SIDE_IN = 0.5;
    private static final double LEFT_IN = 0.95;
    private static final double TOP_IN = 1.0;
    private static final double FOOT_IN = 0.62;
    private static final double BETWEEN_IN = 0.16;

    private final Paper.Running running;
    private final String title;
    private final String flag;
    private final double wide;
    private final double high;
    private final double barIn;
    private final String barWords;
    private final List<List<Mark>> pages = new ArrayList<>();
    private List<Mark> page = new ArrayList<>();
    private double x;
    private double y;
    private double rowHigh;

    private FullSizePages(String title, Paper.Running running, String flag, PaperSize size, boolean metric) {
        this.title = title;
        this.running = running;
        this.flag = flag;
        this.wide = size.longIn();
        this.high = size.shortIn();
        this.barIn = metric ? 100 / 25.4 : 4;
        this.barWords = metric ? "100 mm" : "4\"";
        this.x = LEFT_IN;
        this.y = high - TOP_IN;
    }

    /**
     * @param pieces in groups; a group begins a row of its own
     */
    public static List<Drawing> of(
            String title,
            Paper.Running running,
            String flag,
            PaperSize size,
            boolean metric,
            List<List<Drawing>> pieces) {
        FullSizePages pages = new FullSizePages(title, running, flag, size, metric);
        for (List<Drawing> group : pieces) {
            pages.newRow();
            for (Drawing piece : group) pages.put(piece);
        }
        return pages.finished();
    }

    private void newRow() {
        if (x > LEFT_IN + 1e-9) {
            x = LEFT_IN;
            y -= rowHigh + BETWEEN_IN;
            rowHigh = 0;
        }
    }

    private void put(Drawing piece) {
        if (x > LEFT_IN + 1e-9 && x + piece.paperWidthIn() > wide - SIDE_IN + 1e-9) newRow();
        if (y - piece.paperHeightIn() < FOOT_IN && !page.isEmpty()) {
            pages.add(page);
            page = new ArrayList<>();
            x = LEFT_IN;
            y = high - TOP_IN;
            rowHigh = 0;
        }
        page.addAll(piece.onPaper(new Point(x, y - piece.paperHeightIn())));
        x += piece.paperWidthIn() + BETWEEN_IN;
        rowHigh = Math.max(rowHigh, piece.paperHeightIn());
    }

    private List<Drawing> finished() {
        if (!page.isEmpty()) pages.add(page);
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            List<Mark> marks = new ArrayList<>(pages.get(i));
            around(marks, i + 1, pages.size());
            drawings.add(Drawing.page(title + ", page " + (i + 1), wide, high, marks));
        }
        return List.copyOf(drawings);
    }

    private void around(List<Mark> marks, int number, int count) {
        Look note = Look.note().on(Layer.SHEET);
        double top = high - 0.5;
        marks.add(Text.small(new Point(SIDE_IN, top - 0.05), title)
                .high(Text.LARGE)
                .bold()
                .with(note));
        marks.add(Text.small(new Point(SIDE_IN, top - 0.27), running.contractor() + " \u00b7 " + running.job())
                .with(note.in(Ink.SECOND)));
        double barX = wide - SIDE_IN - barIn;
        bar(marks, new Point(barX, top - 0.06), true);
        bar(marks, new Point(SIDE_IN - 0.02, FOOT_IN + 0.35), false);
        marks.add(Text.small(
                        new Point(wide - SIDE_IN, top - 0.27),
                        "Print at 100 %, never \u201cfit to page\u201d. Measure both bars: " + barWords
                                + " each, or throw the sheet away.")
                .anchored(Text.Across.END, Text.Up.BASELINE)
                .bold()
                .with(note));
        double foot = 0.38;
        marks.add(Stroke.line(
                new Point(SIDE_IN, foot + 0.16), new Point(wide - SIDE_IN, foot + 0.16), note.as(LineKind.THIN)));
        marks.add(Text.small(
                        new Point(SIDE_IN, foot),
                        "rev " + running.revision() + " \u00b7 " + running.date()
                                + " \u00b7 full size, seen from outside")
                .with(note.in(Ink.SECOND)));
        marks.add(Text.small(new Point(wide - SIDE_IN, foot), "page " + number + " of " + count)
                .anchored(Text.Across.END, Text.Up.BASELINE)
                .with(note.in(Ink.SECOND)));
        if (!flag.isEmpty()) flag(marks);
    }

    private void flag(List<Mark> marks) {
        Text words = Text.medium(new Point(0, 0), flag).bold();
        double top = high - 0.14;
        Box box = new Box(wide - SIDE_IN - words.widthIn() - 0.24, top - 0.24, wide - SIDE_IN, top);
        Look look = Look.note().on(Layer.SHEET).in(flag.equals("RELEASED") ? Ink.INK : Ink.MUST_FIX);
        marks.add(Stroke.box(box, look.as(LineKind.HEAVY)));
        marks.add(words.placed(1, box.centre().x(), box.centre().y()).centred().with(look));
    }

    /** A bar in four fields, black and white by turns, with its length beside it. */
    private void bar(List<Mark> marks, Point start, boolean level) {
        Look look = Look.thin(Layer.SHEET);
        double thick = 0.08;
        for (int i = 0; i < 4; i++) {
            double from = barIn * i / 4;
            double to = barIn * (i + 1) / 4;
            Box field = level
                    ? new Box(start.x() + from, start.y(), start.x() + to, start.y() + thick)
                    : new Box(start.x(), start.y() + from, start.x() + thick, start.y() + to);
            if (i % 2 == 0) marks.add(new Fill(field.corners(), look));
            marks.add(Stroke.box(field, look));
        }
        Text words = level
                ? Text.small(start.plus(-0.08, 0), barWords).anchored(Text.Across.END, Text.Up.BASELINE)
                : Text.small(start.plus(0, -0.15), barWords);
        marks.add(words.bold().with(Look.note().on(Layer.SHEET)));
    }
}
