package plumbleaf.jobfile.survey;

import java.util.ArrayList;
import java.util.List;

/** What stands between the columns of a point file. */
public enum Separator {
    COMMA("comma", ','),
    TAB("tab", '\t'),
    SEMICOLON("semicolon", ';'),
    SPACE("space", ' ');

    private final String key;
    private final char mark;

    Separator(String key, char mark) {
        this.key = key;
        this.mark = mark;
    }

    public String key() {
        return key;
    }

    /** The first of tab, semicolon and comma that most lines hold twice or more (between semicolons a comma is a decimal one); else spaces. */
    static Separator of(List<String> lines) {
        for (Separator candidate : List.of(TAB, SEMICOLON, COMMA)) {
            int with = 0;
            for (String line : lines) {
                if (line.chars().filter(c -> c == candidate.mark).count() >= 2) with++;
            }
            if (2 * with > lines.size()) return candidate;
        }
        return SPACE;
    }

    /** The cells of a line; with spaces, several in a row are one. */
    List<String> cells(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean ends = !quoted && (this == SPACE ? c == ' ' || c == '\t' : c == mark);
            if (c == '"') quoted = !quoted;
            else if (ends) close(cells, cell);
            else cell.append(c);
        }
        close(cells, cell);
        return cells;
    }

    private void close(List<String> cells, StringBuilder cell) {
        String text = cell.toString().strip();
        if (this != SPACE || !text.isEmpty()) cells.add(text);
        cell.setLength(0);
    }
}
