package plumbleaf.engine.bars;

/** Finds cut plans. The same task has the same plan, always. */
public interface CutPlanner {
    CutAnswer plan(CutTask task);
}
