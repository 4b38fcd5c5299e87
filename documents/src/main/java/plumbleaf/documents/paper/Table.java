package plumbleaf.documents.paper;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Rows under headings. A row is never cut by the end of a page, and the headings come again on the next. */
public record Table(List<Column> columns, List<Row> rows) implements Block {
    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (Row row : rows)
            if (row.kind() != RowKind.GROUP && row.cells().size() != columns.size())
                throw new IllegalArgumentException(
                        "A row has " + row.cells().size() + " cells under " + columns.size() + " headings: " + row);
    }

    /** Where a cell's words stand. */
    public enum Align {
        LEFT,
        RIGHT,
        CENTRE
    }

    /** What a row is for. */
    public enum RowKind {
        PLAIN,
        /** A line across all columns that names the rows below it. */
        GROUP,
        /** A sum of the rows above. */
        TOTAL
    }

    /**
     * @param wraps whether its words may break into lines; others keep their width
     */
    public record Column(String title, Align align, boolean wraps) {
        public static Column left(String title) {
            return new Column(title, Align.LEFT, false);
        }

        public static Column right(String title) {
            return new Column(title, Align.RIGHT, false);
        }

        public static Column words(String title) {
            return new Column(title, Align.LEFT, true);
        }

        /** A column of boxes to tick. */
        public static Column tick(String title) {
            return new Column(title, Align.CENTRE, false);
        }
    }

    /**
     * @param of the id of the thing in the row, for a screen to link
     */
    public record Row(List<String> cells, RowKind kind, String of) {
        public Row {
            cells = List.copyOf(cells);
        }

        public static Row of(String... cells) {
            return new Row(Arrays.asList(cells), RowKind.PLAIN, "");
        }

        public static Row group(String words) {
            return new Row(List.of(words), RowKind.GROUP, "");
        }

        public static Row total(String... cells) {
            return new Row(Arrays.asList(cells), RowKind.TOTAL, "");
        }

        public Row about(String id) {
            return new Row(cells, kind, id);
        }
    }

    public static Builder with(Column... columns) {
        return new Builder(Arrays.asList(columns));
    }

    @Override
    public <T> T match(Cases<T> cases) {
        return cases.table(this);
    }

    /** Collects rows. */
    public static final class Builder {
        private final List<Column> columns;
        private final List<Row> rows = new ArrayList<>();

        private Builder(List<Column> columns) {
            this.columns = columns;
        }

        public Builder row(String... cells) {
            rows.add(Row.of(cells));
            return this;
        }

        public Builder rowAbout(String id, String... cells) {
            rows.add(Row.of(cells).about(id));
            return this;
        }

        public Builder group(String words) {
            rows.add(Row.group(words));
            return this;
        }

        public Builder total(String... cells) {
            rows.add(Row.total(cells));
            return this;
        }

        public boolean isEmpty() {
            return rows.isEmpty();
        }

        public Table table() {
            return new Table(columns, rows);
        }
    }
}
