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

    private static final int ON_A_PHONE = 3;

    /** Whether a phone shows every row as a small sheet of its own: four columns do not fit beside each other. */
    public boolean isWide() {
        return heads.size() > ON_A_PHONE;
    }

    /** @param of the thing a row is about, ringed in the drawing; may be empty */
    public record Line(String of, List<String> cells) {
        public Line {
            cells = List.copyOf(cells);
        }
    }
}
