package plumbleaf.documents.paper;

import java.util.ArrayList;
import java.util.List;
import plumbleaf.engine.quantity.DecimalText;
import plumbleaf.engine.quantity.DisplayUnits;
import plumbleaf.engine.quantity.MetricWords;
import plumbleaf.engine.quantity.WorkedLine;

/**
 * The units in which papers speak. Of a metric job every word of a paper is said in metric, but for names of things as they are sold
 * and for the formulas of a calculation: those run in the units of the clause they come from, and their result is given in both.
 */
public record Said(DisplayUnits units, MetricWords metric) {
    /** Feet, inches and pounds, as written. */
    public static final Said US = new Said(DisplayUnits.US, MetricWords.keeping(List.of()));

    private static final double KILONEWTONS = 0.0044482216152605;

    public String words(String us) {
        return units.said(us, metric);
    }

    public List<String> words(List<String> us) {
        return us.stream().map(this::words).toList();
    }

    public Paper paper(Paper us) {
        if (units == DisplayUnits.US) return us;
        return new Paper(us.title(), us.running(), us.flag(), blocks(us.blocks()));
    }

    public List<Block> blocks(List<? extends Block> us) {
        if (units == DisplayUnits.US) return List.copyOf(us);
        return us.stream().<Block>map(block -> block.match(new InMetric())).toList();
    }

    /** Each kind of block with its words in metric. */
    private final class InMetric implements Block.Cases<Block> {
        @Override
        public Block heading(Block.Heading block) {
            return new Block.Heading(block.level(), words(block.text()));
        }

        @Override
        public Block paragraph(Block.Paragraph block) {
            return new Block.Paragraph(words(block.text()), block.bold());
        }

        @Override
        public Block table(Table table) {
            List<Table.Column> columns = new ArrayList<>();
            for (Table.Column column : table.columns())
                if (isSaid(column))
                    columns.add(new Table.Column(titled(column.title()), column.align(), column.wraps()));
            List<Table.Row> rows = new ArrayList<>();
            for (Table.Row row : table.rows()) rows.add(new Table.Row(cells(table, row), row.kind(), row.of()));
            return new Table(columns, rows);
        }

        @Override
        public Block note(Block.Note block) {
            return new Block.Note(words(block.text()));
        }

        @Override
        public Block caution(Block.Caution block) {
            return new Block.Caution(words(block.title()), words(block.lines()));
        }

        @Override
        public Block formula(Block.Formula block) {
            String both = words(block.result());
            return new Block.Formula(
                    words(block.what()),
                    block.clause(),
                    block.formula(),
                    block.numbers(),
                    both.equals(block.result()) ? both : block.result() + "  (" + both + ")");
        }

        /** Its lines stay in the units of their clauses; what they give is said in both. */
        @Override
        public Block worked(Block.Worked block) {
            List<WorkedLine> lines = new ArrayList<>();
            for (WorkedLine line : block.lines()) {
                String metric = words(line.result());
                String also = metric.equals(line.result()) ? "" : metric;
                String note = line.note().isEmpty() || also.isEmpty() ? also + line.note() : also + "; " + line.note();
                lines.add(
                        new WorkedLine(line.symbol(), line.formula(), line.numbers(), line.value(), line.unit(), note));
            }
            return new Block.Worked(words(block.what()), block.clause(), block.where(), lines);
        }

        @Override
        public Block picture(Block.Picture block) {
            return new Block.Picture(block.drawing(), words(block.caption()));
        }

        @Override
        public Block pageBreak(Block.PageBreak block) {
            return block;
        }

        @Override
        public Block tickList(Block.TickList block) {
            return new Block.TickList(words(block.items()), block.numbered());
        }

        @Override
        public Block blank(Block.Blank block) {
            return new Block.Blank(words(block.labels()), block.heightIn());
        }
    }

    /** The saw's own whole inches beside feet and inches say nothing more where both are millimetres. */
    private static boolean isSaid(Table.Column column) {
        return !column.title().equals("in inches");
    }

    private List<String> cells(Table table, Table.Row row) {
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < row.cells().size(); i++) {
            if (row.kind() != Table.RowKind.GROUP && !isSaid(table.columns().get(i))) continue;
            String title = row.kind() == Table.RowKind.GROUP
                    ? ""
                    : table.columns().get(i).title();
            cells.add(cell(title, row.cells().get(i)));
        }
        return cells;
    }

    /** {@code Moment, lb-ft} has its unit in the heading; the numbers below it stand bare. */
    private String titled(String title) {
        String unit = unit(title);
        if (unit.isEmpty()) return words(title);
        return title.substring(0, title.length() - unit.length()) + metricUnit(title, unit);
    }

    private static String unit(String title) {
        int at = title.lastIndexOf(", ");
        String last = at < 0 ? "" : title.substring(at + 2);
        return switch (last) {
            case "lb", "lb-ft", "ft\u00b3", "in." -> last;
            default -> "";
        };
    }

    private static String metricUnit(String title, String unit) {
        return switch (unit) {
            case "lb" -> title.startsWith("Weight") ? "kg" : "kN";
            case "lb-ft" -> "kNm";
            case "ft\u00b3" -> "m\u00b3";
            default -> "mm";
        };
    }

    private String cell(String title, String text) {
        String unit = unit(title);
        if (unit.isEmpty() || !text.matches("-?[\\d,]+(\\.\\d+)?")) return words(text);
        double value = Double.parseDouble(text.replace(",", ""));
        return switch (metricUnit(title, unit)) {
            case "kg" -> DisplayUnits.METRIC.weightNumber(value);
            case "kN" -> DecimalText.fixed(value * KILONEWTONS, 2);
            case "kNm" -> DecimalText.fixed(value * KILONEWTONS * 0.3048, 2);
            case "m\u00b3" -> DisplayUnits.METRIC.volumeNumber(value, 2);
            default -> DecimalText.fixed(value * 25.4, 0);
        };
    }
}
