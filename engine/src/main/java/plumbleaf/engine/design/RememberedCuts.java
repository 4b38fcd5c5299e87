package plumbleaf.engine.design;

import java.util.LinkedHashMap;
import java.util.Map;
import plumbleaf.engine.bars.CutAnswer;
import plumbleaf.engine.bars.CutPlanner;
import plumbleaf.engine.bars.CutTask;

/** A planner that answers the same task once: a remedy changes few of a job's pieces. Lives as long as one design. */
final class RememberedCuts implements CutPlanner {
    private final CutPlanner planner;
    private final Map<CutTask, CutAnswer> answers = new LinkedHashMap<>();

    RememberedCuts(CutPlanner planner) {
        this.planner = planner;
    }

    @Override
    public CutAnswer plan(CutTask task) {
        return answers.computeIfAbsent(task, planner::plan);
    }
}
