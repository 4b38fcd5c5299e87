package plumbleaf.cli;

import java.util.ArrayList;
import java.util.List;

/** Text in aligned columns, for a terminal. */
final class Columns {
    private static final int APART = 2;

    private final List<List<String>> rows = new ArrayList<>();
    private final List<Boolean> right = new ArrayList<>();

    /** One letter a column: {@code l} starts at the left, {@code r} ends at the right. */
    Columns(String sides) {
        for (int i = 0; i < sides.length(); i++) right.add(sides.charAt(i) == 'r');
    }

    Columns row(String... cells) {
        if (cells.length != right.size())
            throw new IllegalArgumentException("A row has " + right.size() + " cells, not " + cells.length);
        rows.add(List.of(cells));
        return this;
    }

    boolean isEmpty() {
        return rows.isEmpty();
    }

    /** The rows as lines, indented by so many spaces, none ending in a space. */
    List<String> lines(int indent) {
        List<Integer> widths = new ArrayList<>();
        for (int i = 0; i < right.size(); i++) {
            int widest = 0;
            for (List<String> row : rows) widest = Math.max(widest, width(row.get(i)));
            widths.add(widest);
        }
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder(" ".repeat(indent));
            for (int i = 0; i < row.size(); i++) {
                String gap = " ".repeat(widths.get(i) - width(row.get(i)));
                line.append(right.get(i) ? gap + row.get(i) : row.get(i) + gap).append(" ".repeat(APART));
            }
            lines.add(line.toString().stripTrailing());
        }
        return lines;
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
