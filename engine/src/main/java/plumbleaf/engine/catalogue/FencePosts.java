package plumbleaf.engine.catalogue;

import java.util.List;
import plumbleaf.engine.quantity.Length;

/**
 * The posts a style usually stands on; a job may pin others.
 *
 * @param line sections of line posts, by height of the infill
 * @param terminal sections of end and corner posts; empty where they are the line posts'
 */
public record FencePosts(List<PostSize> line, List<PostSize> terminal) {
    public FencePosts {
        line = List.copyOf(line);
        terminal = List.copyOf(terminal);
        if (line.isEmpty()) throw new IllegalArgumentException("A style names its line posts");
    }

    /**
     * A post for infill up to a height.
     *
     * @param size id of a steel section or of a wood post
     */
    public record PostSize(Length upTo, String size) {}

    public String lineFor(Length infill) {
        return of(line, infill);
    }

    public String terminalFor(Length infill) {
        return terminal.isEmpty() ? lineFor(infill) : of(terminal, infill);
    }

    private static String of(List<PostSize> sizes, Length infill) {
        for (PostSize row : sizes) {
            if (infill.compareTo(row.upTo()) <= 0) return row.size();
        }
        return sizes.get(sizes.size() - 1).size();
    }
}
