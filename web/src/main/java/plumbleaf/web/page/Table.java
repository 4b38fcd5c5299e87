package plumbleaf.web.page;

import java.util.List;

/**
 * Things in rows.
 *
 * @param caption what the rows are
 * @param heads   the columns' names
 */
public record Table(String caption, List<String> heads, List<Line> lines) {
    public Table {
        heads = List.copyOf(heads);
        lines = List.copyOf(lines);
    }

    /** @param of the thing a row is about, ringed in the drawing; may be empty */
    public record Line(String of, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }
    }
}
