package plumbleaf.engine.bars;

import java.util.List;

/**
 * Pieces of one section, and what they can be cut from.
 *
 * @param stock what is cut, as it is ordered
 * @param stepBudget effort allowed; the same task takes the same steps everywhere. When they run out the plan says how far it is proven
 */
public record CutTask(String stock, List<Piece> pieces, List<StockBar> bars, SawRules saw, long stepBudget) {
    /** Some twenty seconds of work on a small machine: the hardest published tasks of some hundred pieces need a part of it, a job's plans next to none. */
    public static final long USUAL_STEPS = 600_000_000;

    /** A few seconds of work, for one plan of a job while somebody waits for its page. */
    public static final long JOB_STEPS = 80_000_000;

    public CutTask {
        pieces = List.copyOf(pieces);
        bars = List.copyOf(bars);
    }
}
