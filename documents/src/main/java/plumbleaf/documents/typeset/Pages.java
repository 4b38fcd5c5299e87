package plumbleaf.documents.typeset;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Drawing;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Mark;
import plumbleaf.documents.drawing.PaperSize;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Scale;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Paper;

/** A paper as pages of marks, with its title on the first, a running line on top and page x of y at the foot of each. */
public final class Pages {
    private static final double SIDE = 0.75;
    private static final double TOP = 0.85;
    private static final double FOOT = 0.80;

    /** So much at least stands on a paper's last page, where it has more than one. */
    private static final double LAST_PAGE_IN = 1.5;

    /** Longer papers are not set again for the sake of a page. */
    private static final int SHORT_PAPER = 4;

    private final Paper paper;
    private final PaperSize size;
    private final Spacing spacing;
    private final List<List<Primitive>> pages = new ArrayList<>();
    private List<Primitive> page = new ArrayList<>();
    private double y;

    private Pages(Paper paper, PaperSize size, Spacing spacing) {
        this.paper = paper;
        this.size = size;
        this.spacing = spacing;
    }

    /** Width that pictures and tables may take. */
    public static double columnWidth(PaperSize size) {
        return size.shortIn() - 2 * SIDE;
    }

    /** Height of a page's column below the title of the first page. */
    public static double columnHeight(PaperSize size) {
        return size.longIn() - TOP - FOOT - 0.5;
    }

    /** A short paper is set closer where that saves a page. */
    public static List<Drawing> of(Paper paper, PaperSize size) {
        List<Drawing> open = new Pages(paper, size, Spacing.OPEN).set();
        if (open.size() == 1 || open.size() > SHORT_PAPER) return open;
        List<Drawing> close = new Pages(paper, size, Spacing.CLOSE).set();
        return close.size() < open.size() ? close : open;
    }

    private List<Drawing> set() {
        y = size.longIn() - TOP;
        title();
        flow();
        pages.add(page);
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < pages.size(); i++) {
            List<Mark> marks = new ArrayList<>(pages.get(i));
            marks.addAll(running(i + 1, pages.size()));
            drawings.add(Drawing.page(paper.title() + ", page " + (i + 1), size.shortIn(), size.longIn(), marks));
        }
        return List.copyOf(drawings);
    }

    private void title() {
        double top = y;
        for (String line :
                Lettering.wrapped(paper.title(), columnWidth(size) - 1.6, Text.LARGE, Text.Weight.SEMIBOLD)) {
            y -= Text.LARGE;
            page.add(
                    Text.small(new Point(SIDE, y), line).high(Text.LARGE).bold().with(Slabs.LOOK));
            y -= 0.12;
        }
        for (Mark mark : paper.running().issuer().atRight(size.shortIn() - SIDE, top))
            page.addAll(mark.drawn(Scale.FULL));
        y = Math.min(
                y,
                top
                        - paper.running().issuer().headIn()
                        - (paper.running().issuer().code().isEmpty() ? 0 : 0.06));
    }

    private void flow() {
        Slabs slabs = new Slabs(columnWidth(size), spacing);
        List<Slab> column = new ArrayList<>();
        boolean afterPicture = false;
        for (Block block : paper.blocks()) {
            boolean picture = block instanceof Block.Picture;
            if (block instanceof Block.Blank || (picture && !afterPicture)) stayAbove(column);
            column.addAll(block.match(slabs));
            afterPicture = picture;
        }
        endTogether(column);
        for (int i = 0; i < column.size(); i++) {
            Slab slab = column.get(i);
            if (slab.newPage()) {
                if (!page.isEmpty()) turn();
                continue;
            }
            boolean continues = i > 0 && column.get(i - 1).withNext();
            if (y - (continues ? slab.high() : chainHigh(column, i)) < FOOT && !page.isEmpty() && !atTop()) {
                turn();
                for (Primitive mark : slab.repeated()) page.add(mark.placed(1, SIDE, y));
                y -= slab.repeatHigh();
            }
            for (Primitive mark : slab.marks()) page.add(mark.placed(1, SIDE, y));
            y -= slab.high();
        }
    }

    /**
     * A line to write on and a picture stay with what they belong to: the last thing above, and the white after that. A picture under a
     * picture belongs to neither: two that had to stay together left half a page white before them.
     */
    private static void stayAbove(List<Slab> column) {
        for (int i = column.size() - 1; i >= 0 && !column.get(i).newPage(); i--) {
            column.set(i, column.get(i).keptWithNext());
            if (!column.get(i).marks().isEmpty()) return;
        }
    }

    /** No page for a signature alone: what a paper ends with stays with what stands before it. */
    private static void endTogether(List<Slab> column) {
        double high = 0;
        for (int i = column.size() - 1; i >= 0 && !column.get(i).newPage(); i--) {
            high += column.get(i).high();
            if (i < column.size() - 1) column.set(i, column.get(i).keptWithNext());
            if (high >= LAST_PAGE_IN) return;
        }
    }

    private boolean atTop() {
        return y >= size.longIn() - TOP - 1e-9;
    }

    /** Height of a slab and all that must stay with it; not more than a page. */
    private double chainHigh(List<Slab> column, int from) {
        double high = 0;
        double most = size.longIn() - TOP - FOOT;
        for (int i = from; i < column.size() && !column.get(i).newPage(); i++) {
            if (high + column.get(i).high() > most) return high;
            high += column.get(i).high();
            if (!column.get(i).withNext()) return high;
        }
        return high;
    }

    private void turn() {
        pages.add(page);
        page = new ArrayList<>();
        y = size.longIn() - TOP;
    }

    private List<Mark> running(int number, int count) {
        List<Mark> marks = new ArrayList<>();
        double right = size.shortIn() - SIDE;
        double head = size.longIn() - 0.55;
        Look second = Slabs.LOOK.in(Ink.SECOND);
        marks.add(
                Text.small(new Point(SIDE, head), paper.running().contractor()).with(second));
        marks.add(
                Text.small(new Point(right, head), number == 1 ? paper.running().job() : paper.title())
                        .anchored(Text.Across.END, Text.Up.BASELINE)
                        .with(second));
        marks.add(Stroke.line(new Point(SIDE, head - 0.08), new Point(right, head - 0.08), second.as(LineKind.THIN)));
        double foot = 0.48;
        marks.add(Stroke.line(new Point(SIDE, foot + 0.17), new Point(right, foot + 0.17), second.as(LineKind.THIN)));
        String left = paper.running().job() + " \u00b7 rev " + paper.running().revision() + " \u00b7 "
                + paper.running().date();
        marks.add(Text.small(new Point(SIDE, foot), left).with(second));
        marks.add(Text.small(new Point(right, foot), "page " + number + " of " + count)
                .anchored(Text.Across.END, Text.Up.BASELINE)
                .with(second));
        if (!paper.flag().isEmpty()) flag(marks, right);
        return marks;
    }

    private void flag(List<Mark> marks, double right) {
        Text words = Text.medium(new Point(0, 0), paper.flag()).bold();
        double wide = words.widthIn() + 0.24;
        double top = size.longIn() - 0.16;
        Box box = new Box(right - wide, top - 0.24, right, top);
        Look look = Slabs.LOOK.in(Ink.MUST_FIX);
        marks.add(Stroke.box(box, look.as(LineKind.HEAVY)));
        marks.add(words.placed(1, box.centre().x(), box.centre().y()).centred().with(look));
    }
}
