package plumbleaf.web.room;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Area;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.Material;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.engine.job.PacketPaper;
import plumbleaf.web.page.Picture.Handle;
import plumbleaf.web.page.Picture.Told;
import plumbleaf.web.page.Picture.Way;

/**
 * The papers of the packet one under the other, each with its pages as little sheets where all of them have room: any can be drawn to
 * another place by its number.
 */
record PacketPicture(PacketOrder order, List<Integer> pages, double wideIn) {
    private static final double ROW_IN = 0.27;
    private static final double TITLE_IN = 0.42;
    private static final double SHEETS_IN = 2.75;
    private static final double SHEET_WIDE_IN = 0.12;
    private static final double SHEET_HIGH_IN = 0.16;
    private static final double SHEET_PITCH_IN = 0.16;
    private static final double COUNT_IN = 0.75;

    private static String mark(PacketPaper paper) {
        return "packet." + paper.key();
    }

    /** What is taken hold of: not the whole line, so that a finger can still scroll past the list. */
    static String grip(PacketPaper paper) {
        return mark(paper) + ".place";
    }

    Drawing drawing() {
        List<Mark> marks = new ArrayList<>();
        for (int i = 0; i < order.in().size(); i++) row(marks, i);
        return Drawing.of("The packet in its order", Scale.FULL, marks);
    }

    private void row(List<Mark> marks, int index) {
        PacketPaper paper = order.in().get(index);
        double y = -index * ROW_IN;
        double half = ROW_IN / 2 - 0.02;
        Look edge = new Look(Layer.CHART, LineKind.THIN, Ink.HAIR, mark(paper));
        marks.add(Area.edged(new Box(TITLE_IN, y - half, wideIn, y + half).corners(), Material.CLEAR, edge));
        Look held = new Look(Layer.CHART, LineKind.THIN, Ink.CHALK, grip(paper));
        marks.add(Area.edged(new Box(0, y - half, TITLE_IN, y + half).corners(), Material.CLEAR, held));
        marks.add(Text.small(new Point(0.05, y), Integer.toString(index + 1))
                .anchored(Text.Across.START, Text.Up.MIDDLE)
                .of(grip(paper)));
        for (int i = -1; i <= 1; i++)
            marks.add(Stroke.line(
                    new Point(TITLE_IN - 0.16, y + i * 0.04), new Point(TITLE_IN - 0.06, y + i * 0.04), held));
        marks.add(Text.small(new Point(TITLE_IN + 0.1, y), words(paper))
                .anchored(Text.Across.START, Text.Up.MIDDLE)
                .of(mark(paper)));
        int count = pages.get(index);
        for (int i = 0; allHaveRoom() && i < count; i++) {
            double x = SHEETS_IN + i * SHEET_PITCH_IN;
            marks.add(Area.edged(
                    new Box(x, y - SHEET_HIGH_IN / 2, x + SHEET_WIDE_IN, y + SHEET_HIGH_IN / 2).corners(),
                    Material.STEEL_FACE,
                    Look.thin(Layer.CHART).of(mark(paper))));
        }
        marks.add(Text.small(new Point(wideIn - 0.08, y), count == 1 ? "1 page" : count + " pages")
                .anchored(Text.Across.END, Text.Up.MIDDLE)
                .of(mark(paper)));
    }

    private boolean allHaveRoom() {
        double room = wideIn - SHEETS_IN - COUNT_IN;
        return pages.stream().allMatch(count -> count * SHEET_PITCH_IN <= room);
    }

    /** A gate's kind has the longest name by far. */
    private static String words(PacketPaper paper) {
        return paper == PacketPaper.GATE ? "Gate shop drawings" : PacketOrder.title(paper);
    }

    List<Handle> handles() {
        List<Handle> handles = new ArrayList<>();
        for (int i = 0; i < order.in().size(); i++) {
            PacketPaper paper = order.in().get(i);
            handles.add(new Handle(
                    grip(paper),
                    PacketOrder.path(paper),
                    "Place of " + words(paper),
                    new Way(0, -ROW_IN),
                    i + 1,
                    1,
                    1,
                    order.in().size(),
                    Told.PLACE));
        }
        return handles;
    }
}
