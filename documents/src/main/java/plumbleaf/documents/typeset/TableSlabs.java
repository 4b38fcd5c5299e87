package plumbleaf.documents.typeset;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import plumbleaf.documents.drawing.Box;
import plumbleaf.documents.drawing.Ink;
import plumbleaf.documents.drawing.Lettering;
import plumbleaf.documents.drawing.LineKind;
import plumbleaf.documents.drawing.Look;
import plumbleaf.documents.drawing.Point;
import plumbleaf.documents.drawing.Primitive;
import plumbleaf.documents.drawing.Stroke;
import plumbleaf.documents.drawing.Text;
import plumbleaf.documents.paper.Table;
import plumbleaf.documents.paper.Table.Align;
import plumbleaf.documents.paper.Table.Column;
import plumbleaf.documents.paper.Table.Row;
import plumbleaf.documents.paper.Table.RowKind;

/** A table as one slab a row, with column widths from what stands in them. */
final class TableSlabs {
    private static final double PAD = 0.07;
    private static final double TICK = 0.13;
    /** Width that is given away at a time, rows that are looked at for it, and what ragged ends add to a line of words. */
    private static final double STEP = 0.08;

    private static final int SAMPLED = 60;
    private static final double RAGGED = 1.1;

    /** No table up to this height is broken over two pages. */
    private static final double WHOLE_IN = 3;

    private static final String TICK_BOX = "\u2610";

    private final Table table;
    private final double wide;
    private final Spacing spacing;
    private final Map<Integer, Double> measured = new HashMap<>();
    private final List<Double> widths;

    TableSlabs(Table table, double wide, Spacing spacing) {
        this.table = table;
        this.wide = wide;
        this.spacing = spacing;
        this.widths = widths();
    }

    List<Slab> slabs() {
        List<Slab> slabs = new ArrayList<>();
        Slab headings = headings();
        slabs.add(headings.keptWithNext());
        for (int i = 0; i < table.rows().size(); i++) {
            Row row = table.rows().get(i);
            Slab slab = row(row).under(headings.marks(), headings.high());
            boolean beforeTotal = i + 1 < table.rows().size()
                    && table.rows().get(i + 1).kind() == RowKind.TOTAL
                    && row.kind() != RowKind.TOTAL;
            slabs.add(row.kind() == RowKind.GROUP || beforeTotal ? slab.keptWithNext() : slab);
        }
        // A short table is read in one look: it is never torn apart. Of a long one no single row stays behind its
        // headings or goes on alone.
        double high = slabs.stream().mapToDouble(Slab::high).sum();
        int rows = slabs.size();
        for (int i = 0; i < rows - 1; i++)
            if (high <= WHOLE_IN || i == 1 || i == rows - 2)
                slabs.set(i, slabs.get(i).keptWithNext());
        slabs.add(Slab.of(spacing.gap(), List.of()));
        return slabs;
    }

    private Slab headings() {
        List<Primitive> marks = new ArrayList<>();
        double high = 0;
        for (int i = 0; i < widths.size(); i++)
            high = Math.max(
                    high, linesOf(table.columns().get(i).title(), i, true).size() * Slabs.PITCH);
        double x = 0;
        for (int i = 0; i < widths.size(); i++) {
            List<String> lines = linesOf(table.columns().get(i).title(), i, true);
            double top = -(high - lines.size() * Slabs.PITCH);
            cell(marks, lines, x, top - 0.04, i, true, Slabs.LOOK);
            x += widths.get(i);
        }
        double foot = -high - spacing.row() - 0.02;
        marks.add(Stroke.line(new Point(0, foot), new Point(wide, foot), Slabs.LOOK.as(LineKind.VISIBLE)));
        return Slab.of(-foot, marks);
    }

    private Slab row(Row row) {
        Look look = Slabs.LOOK.of(row.of());
        List<Primitive> marks = new ArrayList<>();
        if (row.kind() == RowKind.GROUP) {
            double y = 0;
            for (String line :
                    Lettering.wrapped(row.cells().get(0), wide - 2 * PAD, Text.SMALL, Text.Weight.SEMIBOLD)) {
                y -= Slabs.PITCH;
                marks.add(Text.small(new Point(PAD, y + 0.02), line).bold().with(look));
            }
            double foot = y - spacing.row();
            marks.add(0, Slabs.band(new Box(0, foot, wide, 0)));
            marks.add(Stroke.line(new Point(0, foot), new Point(wide, foot), look.as(LineKind.DIMENSION)));
            return Slab.of(-foot, marks);
        }
        boolean bold = row.kind() == RowKind.TOTAL;
        double high = 0;
        double x = 0;
        for (int i = 0; i < widths.size(); i++) {
            String words = row.cells().get(i);
            if (words.equals(TICK_BOX)) {
                double middle = x + widths.get(i) / 2;
                marks.add(Stroke.box(
                        new Box(middle - TICK / 2, -0.03 - TICK, middle + TICK / 2, -0.03), look.as(LineKind.THIN)));
                high = Math.max(high, Slabs.PITCH);
            } else {
                List<String> lines = linesOf(words, i, bold);
                high = Math.max(high, lines.size() * Slabs.PITCH);
                cell(marks, lines, x, -0.02, i, bold, look);
            }
            x += widths.get(i);
        }
        double foot = -high - spacing.row();
        Look rule =
                bold ? look.as(LineKind.VISIBLE) : look.as(LineKind.DIMENSION).in(Ink.HAIR);
        if (bold) marks.add(Stroke.line(new Point(0, 0), new Point(wide, 0), look.as(LineKind.THIN)));
        marks.add(Stroke.line(new Point(0, foot), new Point(wide, foot), rule));
        return Slab.of(-foot, marks);
    }

    private void cell(
            List<Primitive> marks, List<String> lines, double x, double top, int column, boolean bold, Look look) {
        Align align = table.columns().get(column).align();
        double width = widths.get(column);
        double at = align == Align.LEFT ? x + PAD : align == Align.RIGHT ? x + width - PAD : x + width / 2;
        Text.Across across =
                align == Align.LEFT ? Text.Across.START : align == Align.RIGHT ? Text.Across.END : Text.Across.MIDDLE;
        double y = top;
        for (String line : lines) {
            y -= Slabs.PITCH;
            Text words = Text.small(new Point(at, y + 0.045), line)
                    .anchored(across, Text.Up.BASELINE)
                    .with(look);
            if (!line.isEmpty()) marks.add(bold ? words.bold() : words);
        }
    }

    private List<String> linesOf(String words, int column, boolean bold) {
        return Lettering.wrapped(
                words,
                widths.get(column) - 2 * PAD + 1e-6,
                Text.SMALL,
                bold ? Text.Weight.SEMIBOLD : Text.Weight.REGULAR);
    }

    /**
     * Columns that keep their width take it and those of words share the rest by what they hold; where that leaves words too little, all
     * columns give way, none below its longest word as long as there is room. Where none is of words, that gives way which costs fewest lines:
     * one long word among many short does not break the holes of a hundred posts.
     */
    private List<Double> widths() {
        List<Double> natural = new ArrayList<>();
        List<Double> least = new ArrayList<>();
        double kept = 0;
        double shared = 0;
        double leastWords = 0;
        for (int i = 0; i < table.columns().size(); i++) {
            Column column = table.columns().get(i);
            double word = longestWordOf(i);
            double need = column.wraps() ? natural(i) : Math.max(bodyOf(i), word);
            natural.add(need);
            least.add(Math.min(word, need));
            if (column.wraps()) {
                shared += need;
                leastWords += word;
            } else {
                kept += need;
            }
        }
        double rest = wide - kept;
        if (shared == 0 && rest >= 0) {
            double spare = rest / natural.size();
            return natural.stream().map(need -> need + spare).toList();
        }
        double leastOfAll = least.stream().mapToDouble(Double::doubleValue).sum();
        if (shared == 0 && leastOfAll <= wide) return shared(natural, least, wide);
        if (shared == 0 || rest < leastWords) return squeezed(natural, least);
        return shared(natural, least, rest);
    }

    /**
     * Word columns of at least their longest word; what is left is given away in small steps, each to the column that makes the table
     * least high, and where none does to the one whose words are longest for its width.
     */
    private List<Double> shared(List<Double> natural, List<Double> least, double rest) {
        List<Double> widths = new ArrayList<>();
        double room = rest;
        for (int i = 0; i < natural.size(); i++) {
            boolean words = givesWay(i);
            widths.add(words ? least.get(i) : natural.get(i));
            if (words) room -= least.get(i);
        }
        while (room > 1e-6) {
            double step = Math.min(STEP, room);
            int best = -1;
            double bestLines = 0;
            for (int i = 0; i < widths.size(); i++) {
                if (!givesWay(i) || widths.get(i) >= natural.get(i)) continue;
                double saved = lines(widths, -1, 0) - lines(widths, i, step);
                double tie = natural.get(i) / widths.get(i) * 1e-6;
                if (best < 0 || saved + tie > bestLines) {
                    best = i;
                    bestLines = saved + tie;
                }
            }
            if (best < 0) break;
            widths.set(best, widths.get(best) + step);
            room -= step;
        }
        long words = IntStream.range(0, widths.size()).filter(this::givesWay).count();
        for (int i = 0; i < widths.size(); i++)
            if (givesWay(i)) widths.set(i, widths.get(i) + Math.max(0, room) / words);
        return List.copyOf(widths);
    }

    private boolean givesWay(int column) {
        return table.columns().get(column).wraps() || table.columns().stream().noneMatch(Column::wraps);
    }

    /** How many lines the rows come to, about, with one column wider by so much. A step is worth a part of a line too, for long words. */
    private double lines(List<Double> widths, int wider, double by) {
        double sum = 0;
        int sampled = Math.max(1, table.rows().size() / SAMPLED);
        for (int row = 0; row < table.rows().size(); row += sampled) {
            if (table.rows().get(row).kind() == RowKind.GROUP) continue;
            double most = 1;
            for (int i = 0; i < widths.size(); i++) {
                if (!givesWay(i)) continue;
                double width = widths.get(i) + (i == wider ? by : 0) - 2 * PAD;
                double lines = Math.max(1, wordsWide(row, i) * RAGGED / width);
                most = Math.max(most, lines);
            }
            sum += most;
        }
        return sum;
    }

    private double wordsWide(int row, int column) {
        return measured.computeIfAbsent(
                row * table.columns().size() + column,
                key -> Lettering.width(
                        table.rows().get(row).cells().get(column).replace('\n', ' '), Text.SMALL, Text.Weight.REGULAR));
    }

    private List<Double> squeezed(List<Double> natural, List<Double> least) {
        double leastSum = least.stream().mapToDouble(Double::doubleValue).sum();
        double slack = natural.stream().mapToDouble(Double::doubleValue).sum() - leastSum;
        List<Double> widths = new ArrayList<>();
        for (int i = 0; i < natural.size(); i++) {
            double give = slack > 0 ? (natural.get(i) - least.get(i)) / slack * Math.max(0, wide - leastSum) : 0;
            widths.add(leastSum > wide ? least.get(i) * wide / leastSum : least.get(i) + give);
        }
        return List.copyOf(widths);
    }

    /** No word of a column is broken when it is this wide. */
    private double longestWordOf(int column) {
        double most = longestWord(table.columns().get(column).title(), Text.Weight.SEMIBOLD);
        for (Row row : table.rows())
            if (row.kind() != RowKind.GROUP)
                most = Math.max(
                        most,
                        longestWord(
                                row.cells().get(column),
                                row.kind() == RowKind.TOTAL ? Text.Weight.SEMIBOLD : Text.Weight.REGULAR));
        return most + 2 * PAD + 1e-6;
    }

    private double natural(int column) {
        return Math.max(
                bodyOf(column),
                Lettering.width(table.columns().get(column).title(), Text.SMALL, Text.Weight.SEMIBOLD) + 2 * PAD);
    }

    private double bodyOf(int column) {
        double most = 0.3;
        for (Row row : table.rows()) {
            if (row.kind() == RowKind.GROUP) continue;
            Text.Weight weight = row.kind() == RowKind.TOTAL ? Text.Weight.SEMIBOLD : Text.Weight.REGULAR;
            for (String line : row.cells().get(column).split("\n", -1))
                most = Math.max(most, Lettering.width(line, Text.SMALL, weight) + 2 * PAD);
        }
        return most;
    }

    private static double longestWord(String words, Text.Weight weight) {
        double most = 0;
        for (String word : Lettering.words(words.replace('\n', ' ')))
            most = Math.max(most, Lettering.width(word, Text.SMALL, weight));
        return most;
    }
}
