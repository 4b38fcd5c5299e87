package plumbleaf.documents.typeset;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Fill;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Layer;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.paper.Block;
import plumbleaf.documents.paper.Table;

/** Turns one block into slabs of a column of a given width. Three sizes of lettering, as everywhere. */
final class Slabs implements Block.Cases<List<Slab>> {
    static final double PITCH = 0.170;
    private static final int SHORT_LIST = 6;

    static final Look LOOK = Look.note().on(Layer.NOTES);

    private final double wide;
    private final Spacing spacing;

    Slabs(double wide, Spacing spacing) {
        this.wide = wide;
        this.spacing = spacing;
    }

    @Override
    public List<Slab> heading(Block.Heading block) {
        double size = block.level() == 1 ? Text.LARGE * 0.8 : Text.MEDIUM * 0.92;
        double above = block.level() == 1 ? spacing.aboveHeading() : 0.14;
        List<Primitive> marks = new ArrayList<>();
        double y = -above;
        for (String line : Lettering.wrapped(block.text(), wide, size, Text.Weight.SEMIBOLD)) {
            y -= size;
            marks.add(Text.small(new Point(0, y), line).high(size).bold().with(LOOK));
            y -= size * 0.5;
        }
        if (block.level() == 1) {
            y -= 0.02;
            marks.add(Stroke.line(new Point(0, y), new Point(wide, y), LOOK.as(LineKind.VISIBLE)));
        }
        return List.of(Slab.of(-y + 0.07, marks).keptWithNext());
    }

    @Override
    public List<Slab> paragraph(Block.Paragraph block) {
        return lines(block.text(), 0, block.bold() ? Text.Weight.SEMIBOLD : Text.Weight.REGULAR, LOOK, false);
    }

    @Override
    public List<Slab> note(Block.Note block) {
        return lines(block.text(), 0.14, Text.Weight.REGULAR, LOOK.in(Ink.SECOND), true);
    }

    /** Words in lines; the first two lines stay together, and so do the last two. */
    private List<Slab> lines(String text, double indent, Text.Weight weight, Look look, boolean ruled) {
        List<String> lines = Lettering.wrapped(text, wide - indent, Text.SMALL, weight);
        List<Slab> slabs = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            boolean last = i == lines.size() - 1;
            List<Primitive> marks = new ArrayList<>();
            Text words =
                    Text.small(new Point(indent, -PITCH + 0.05), lines.get(i)).with(look);
            marks.add(weight == Text.Weight.SEMIBOLD ? words.bold() : words);
            if (ruled)
                marks.add(Stroke.line(
                        new Point(0.04, 0),
                        new Point(0.04, -PITCH),
                        look.as(LineKind.VISIBLE).in(Ink.HAIR)));
            Slab slab = Slab.of(last ? PITCH + spacing.gap() : PITCH, marks);
            boolean keep = !last && (i == 0 || i == lines.size() - 2);
            slabs.add(keep ? slab.keptWithNext() : slab);
        }
        return slabs;
    }

    @Override
    public List<Slab> caution(Block.Caution block) {
        List<Primitive> marks = new ArrayList<>();
        double y = -0.14;
        Look ink = LOOK.in(Ink.CAUTION);
        y -= Text.MEDIUM;
        marks.add(Stroke.outline(
                List.of(new Point(0.13, y - 0.01), new Point(0.29, y - 0.01), new Point(0.21, y + 0.13)),
                ink.as(LineKind.VISIBLE)));
        marks.add(Text.medium(new Point(0.38, y), block.title()).bold().with(LOOK));
        y -= 0.05;
        for (String item : block.lines()) {
            y -= 0.04;
            boolean first = true;
            for (String line : Lettering.wrapped(item, wide - 0.75, Text.SMALL, Text.Weight.REGULAR)) {
                y -= PITCH;
                if (first)
                    marks.add(Text.small(new Point(0.38, y + 0.03), "\u2022").with(LOOK));
                first = false;
                marks.add(Text.small(new Point(0.52, y + 0.03), line).with(LOOK));
            }
        }
        y -= 0.09;
        marks.add(0, Stroke.box(new Box(0, y, wide, -0.04), ink.as(LineKind.VISIBLE)));
        return List.of(Slab.of(-y + spacing.gap(), marks));
    }

    @Override
    public List<Slab> formula(Block.Formula block) {
        List<Primitive> marks = new ArrayList<>();
        double clauseWide =
                Math.min(wide * 0.45, Lettering.width(block.clause(), Text.SMALL, Text.Weight.REGULAR) + 0.001);
        double y = 0;
        double top = y;
        for (String line : Lettering.wrapped(block.what(), wide - clauseWide - 0.2, Text.SMALL, Text.Weight.SEMIBOLD)) {
            y -= PITCH;
            marks.add(Text.small(new Point(0, y + 0.05), line).bold().with(LOOK));
        }
        double clauseY = top;
        for (String line : Lettering.wrapped(block.clause(), clauseWide, Text.SMALL, Text.Weight.REGULAR)) {
            clauseY -= PITCH;
            marks.add(Text.small(new Point(wide, clauseY + 0.05), line)
                    .anchored(Text.Across.END, Text.Up.BASELINE)
                    .with(LOOK.in(Ink.SECOND)));
        }
        y = Math.min(y, clauseY);
        for (String part : List.of(block.formula(), block.numbers(), block.result())) {
            if (part.isEmpty()) continue;
            boolean result = part.equals(block.result());
            Text.Weight weight = result ? Text.Weight.SEMIBOLD : Text.Weight.REGULAR;
            boolean first = true;
            String lead = part.equals(block.formula()) ? "" : "= ";
            for (String line : Lettering.wrapped(part, wide - 0.6, Text.SMALL, weight)) {
                y -= PITCH;
                Text words = Text.small(new Point(first ? 0.35 : 0.5, y + 0.05), (first ? lead : "") + line)
                        .with(LOOK);
                marks.add(result ? words.bold() : words);
                first = false;
            }
        }
        return List.of(Slab.of(-y + spacing.gap(), marks));
    }

    @Override
    public List<Slab> worked(Block.Worked block) {
        return new WorkedSlabs(wide, spacing).of(block);
    }

    @Override
    public List<Slab> picture(Block.Picture block) {
        double high = block.drawing().paperHeightIn();
        double over = block.drawing().paperWidthIn() - wide;
        List<Primitive> marks = new ArrayList<>(block.drawing().onPaper(new Point(-over / 2, -high)));
        double y = -high;
        for (String line : Lettering.wrapped(block.caption(), wide, Text.SMALL, Text.Weight.REGULAR)) {
            if (line.isEmpty()) continue;
            y -= PITCH;
            marks.add(Text.small(new Point(wide / 2, y + 0.04), line)
                    .anchored(Text.Across.MIDDLE, Text.Up.BASELINE)
                    .with(LOOK.in(Ink.SECOND)));
        }
        return List.of(Slab.of(-y + spacing.gap(), marks));
    }

    @Override
    public List<Slab> pageBreak(Block.PageBreak block) {
        return List.of(Slab.pageBreak());
    }

    @Override
    public List<Slab> tickList(Block.TickList block) {
        List<Slab> slabs = new ArrayList<>();
        int number = 0;
        for (String item : block.items()) {
            number++;
            List<Primitive> marks = new ArrayList<>();
            double indent = block.numbered() ? 0.55 : 0.28;
            marks.add(Stroke.box(new Box(0.02, -0.155, 0.15, -0.025), LOOK.as(LineKind.THIN)));
            if (block.numbered())
                marks.add(Text.small(new Point(0.44, -PITCH + 0.05), number + ".")
                        .anchored(Text.Across.END, Text.Up.BASELINE)
                        .with(LOOK));
            double y = 0;
            for (String line : Lettering.wrapped(item, wide - indent, Text.SMALL, Text.Weight.REGULAR)) {
                y -= PITCH;
                marks.add(Text.small(new Point(indent, y + 0.05), line).with(LOOK));
            }
            Slab slab = Slab.of(-y + (number == block.items().size() ? spacing.gap() : spacing.betweenItems()), marks);
            slabs.add(staysWithNext(number, block.items().size()) ? slab.keptWithNext() : slab);
        }
        return slabs;
    }

    /** A short list stays whole; of a long one the first two and the last two stay together. */
    private static boolean staysWithNext(int number, int count) {
        if (number == count) return false;
        return count <= SHORT_LIST || number == 1 || number == count - 1;
    }

    @Override
    public List<Slab> blank(Block.Blank block) {
        List<Primitive> marks = new ArrayList<>();
        int count = block.labels().size();
        if (count == 1) {
            marks.add(Stroke.box(new Box(0, -block.heightIn(), wide, 0), LOOK.as(LineKind.THIN)));
            marks.add(Text.small(new Point(0.08, -0.16), block.labels().get(0)).with(LOOK.in(Ink.SECOND)));
            return List.of(Slab.of(block.heightIn() + spacing.gap(), marks));
        }
        double each = wide / count;
        for (int i = 0; i < count; i++) {
            double x = i * each;
            double line = -Math.min(block.heightIn(), spacing.mostAboveLine());
            marks.add(Stroke.line(new Point(x, line), new Point(x + each - 0.2, line), LOOK.as(LineKind.THIN)));
            marks.add(
                    Text.small(new Point(x, line - 0.14), block.labels().get(i)).with(LOOK.in(Ink.SECOND)));
        }
        return List.of(Slab.of(Math.min(block.heightIn(), spacing.mostAboveLine()) + 0.2 + spacing.gap(), marks));
    }

    @Override
    public List<Slab> table(Table block) {
        return new TableSlabs(block, wide, spacing).slabs();
    }

    static Fill band(Box box) {
        return Fill.of(box.corners(), Layer.HATCH, Ink.TINT_BAND);
    }
}
