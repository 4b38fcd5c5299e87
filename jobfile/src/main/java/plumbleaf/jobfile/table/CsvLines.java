package plumbleaf.jobfile.table;

import java.util.ArrayList;
import java.util.List;

/** Splits a text into records of cells, RFC 4180 quoting, with lines that start with # left out. */
final class CsvLines {
    /** One record and the line it starts on, counted from 1. */
    record Line(int number, List<String> cells, boolean closed) {}

    private final String text;
    private int at;
    private int lineNumber = 1;

    private CsvLines(String text) {
        this.text = text;
    }

    static List<Line> of(String text) {
        CsvLines lines = new CsvLines(text.startsWith("\ufeff") ? text.substring(1) : text);
        List<Line> found = new ArrayList<>();
        while (lines.at < lines.text.length()) lines.line(found);
        return found;
    }

    private void line(List<Line> found) {
        if (text.charAt(at) == '#') {
            while (at < text.length() && text.charAt(at) != '\n') at++;
            endOfLine();
            return;
        }
        int number = lineNumber;
        List<String> cells = new ArrayList<>();
        boolean closed = cell(cells);
        while (closed && at < text.length() && text.charAt(at) == ',') {
            at++;
            closed = cell(cells);
        }
        endOfLine();
        boolean empty = cells.size() == 1 && cells.get(0).isBlank();
        if (!empty) found.add(new Line(number, List.copyOf(cells), closed));
    }

    /** Reads one cell; false when its quote is never closed. */
    private boolean cell(List<String> cells) {
        StringBuilder cell = new StringBuilder();
        boolean quoted = at < text.length() && text.charAt(at) == '"';
        boolean closed = !quoted;
        if (quoted) at++;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (!quoted && (c == ',' || c == '\n')) break;
            at++;
            if (quoted && c == '"') {
                boolean doubled = at < text.length() && text.charAt(at) == '"';
                if (doubled) {
                    at++;
                    cell.append('"');
                } else {
                    quoted = false;
                    closed = true;
                }
                continue;
            }
            if (c == '\n') lineNumber++;
            if (c != '\r') cell.append(c);
        }
        cells.add(cell.toString().strip());
        return closed;
    }

    private void endOfLine() {
        if (at < text.length() && text.charAt(at) == '\n') at++;
        lineNumber++;
    }
}
