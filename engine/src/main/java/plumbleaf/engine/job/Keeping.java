package plumbleaf.engine.job;

import java.util.List;
import plumbleaf.engine.quantity.Length;

/**
 * What runs of fence are to keep in or out.
 *
 * @param runs those meant; empty for all
 * @param largest gap under them, where it is not the usual one
 */
public record Keeping(Kept what, List<String> runs, Stated<Length> largest) {
    public Keeping {
        runs = List.copyOf(runs);
    }

    public boolean holds(String run) {
        return runs.isEmpty() || runs.contains(run);
    }

    public Length gap() {
        return largest.or(what.gap());
    }
}
