package plumbleaf.web.desk;

import java.util.List;

/**
 * The desk as printed: where all jobs stand, and one page of them.
 *
 * @param search what was looked for; empty for everything
 * @param at     key of the standing shown; empty for all of them
 * @param from   how many jobs stand before the first one shown
 * @param more   whether there are more behind the last
 * @param behind jobs that are not worked out yet
 */
public record DeskSheet(
        String search, String at, List<Pile> piles, List<DeskLine> lines, int from, boolean more, long behind) {
    public DeskSheet {
        piles = List.copyOf(piles);
        lines = List.copyOf(lines);
    }

    /**
     * Jobs that stand at one place.
     *
     * @param value what they come to; empty for who sees no money
     */
    public record Pile(String key, String words, long jobs, String value) {}

    public boolean isAll() {
        return search.isEmpty() && at.isEmpty();
    }
}
