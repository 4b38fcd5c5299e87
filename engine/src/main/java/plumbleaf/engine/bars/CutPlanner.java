package plumbleaf.engine.bars;

/** Finds cut plans. The same task has the same plan, always. */
public interface CutPlanner {
    CutAnswer plan(CutTask task);

    /** A plan of the same bars, cut in any way that needs no more of them: enough for an order and its price, and sooner there. */
    default CutAnswer order(CutTask task) {
        return plan(task);
    }
}
