package plumbleaf.documents.typeset;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.paper.Block;
import plumbleaf.engine.quantity.WorkedLine;

/** A calculation line by line: what is computed and its clause above, each result in bold behind its numbers, a word on it at the right. */
final class WorkedSlabs {
    private static final double INDENT = 0.35;
    private static final double HANGING = 0.55;

    private final double wide;
    private final Spacing spacing;

    WorkedSlabs(double wide, Spacing spacing) {
        this.wide = wide;
        this.spacing = spacing;
    }

    List<Slab> of(Block.Worked block) {
        List<Slab> slabs = new ArrayList<>();
        slabs.add(head(block));
        for (int i = 0; i < block.lines().size(); i++) {
            boolean last = i == block.lines().size() - 1;
            slabs.add(line(block.lines().get(i), last));
        }
        return slabs;
    }

    private Slab head(Block.Worked block) {
        List<Primitive> marks = new ArrayList<>();
        double clauseWide = Math.min(wide * 0.45, width(block.clause()) + 0.001);
        double y = 0;
        for (String words :
                Lettering.wrapped(block.what(), wide - clauseWide - 0.2, Text.SMALL, Text.Weight.SEMIBOLD)) {
            y -= Slabs.PITCH;
            marks.add(small(0, y, words).bold());
        }
        double clauseY = 0;
        for (String words : Lettering.wrapped(block.clause(), clauseWide, Text.SMALL, Text.Weight.REGULAR)) {
            clauseY -= Slabs.PITCH;
            marks.add(atRight(clauseY, words));
        }
        y = Math.min(y, clauseY);
        if (!block.where().isEmpty())
            for (String words : Lettering.wrapped(block.where(), wide - INDENT, Text.SMALL, Text.Weight.REGULAR)) {
                y -= Slabs.PITCH;
                marks.add(small(INDENT, y, words).with(Slabs.LOOK.in(Ink.SECOND)));
            }
        return Slab.of(-y, marks).keptWithNext();
    }

    private Slab line(WorkedLine line, boolean last) {
        List<Primitive> marks = new ArrayList<>();
        String working =
                line.text().substring(0, line.text().length() - line.result().length());
        double resultWide = Lettering.width(line.result(), Text.SMALL, Text.Weight.SEMIBOLD);
        double y = 0;
        double x = INDENT;
        List<String> rows = rows(line, working, wide - HANGING);
        for (int i = 0; i < rows.size(); i++) {
            y -= Slabs.PITCH;
            x = i == 0 ? INDENT : HANGING;
            marks.add(small(x, y, rows.get(i)));
            x += width(rows.get(i)) + 0.04;
        }
        if (x + resultWide > wide) {
            y -= Slabs.PITCH;
            x = HANGING;
        }
        marks.add(small(x, y, line.result()).bold());
        x += resultWide + 0.15;
        if (!line.note().isEmpty())
            for (String words : Lettering.wrapped(line.note(), wide - HANGING, Text.SMALL, Text.Weight.REGULAR)) {
                if (x + width(words) > wide) y -= Slabs.PITCH;
                marks.add(atRight(y, words));
                x = wide;
            }
        return Slab.of(-y + (last ? spacing.gap() : 0.02), marks);
    }

    /** In one row where it goes; else the numbers begin a row of their own, and wrap if they must. */
    private static List<String> rows(WorkedLine line, String working, double room) {
        if (width(working) <= room) return List.of(working.strip());
        List<String> rows = new ArrayList<>();
        if (line.formula().equals(line.numbers()))
            return Lettering.wrapped(working.strip(), room, Text.SMALL, Text.Weight.REGULAR);
        rows.addAll(Lettering.wrapped(line.symbol() + " = " + line.formula(), room, Text.SMALL, Text.Weight.REGULAR));
        rows.addAll(Lettering.wrapped("= " + line.numbers() + " =", room, Text.SMALL, Text.Weight.REGULAR));
        return rows;
    }

    private static double width(String words) {
        return Lettering.width(words, Text.SMALL, Text.Weight.REGULAR);
    }

    private static Text small(double x, double y, String words) {
        return Text.small(new Point(x, y + 0.05), words).with(Slabs.LOOK);
    }

    private Text atRight(double y, String words) {
        return Text.small(new Point(wide, y + 0.05), words)
                .anchored(Text.Across.END, Text.Up.BASELINE)
                .with(Slabs.LOOK.in(Ink.SECOND));
    }
}
