package plumbleaf.engine.labour;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumbleaf.engine.job.Actual;

/** The estimate against what was written down, task by task: those estimated first, in their order, then those that nobody had thought of. */
public final class Variances {
    private Variances() {}

    public static List<TaskVariance> of(Labour estimate, List<Actual> hours) {
        Map<String, TaskVariance> byTask = new LinkedHashMap<>();
        for (TaskHours task : estimate.tasks())
            byTask.merge(
                    task.rate().task(),
                    new TaskVariance(task.rate().task(), task.rate().name(), task.quantity(), task.hours(), 0, 0),
                    Variances::plus);
        for (Actual actual : hours)
            byTask.merge(
                    actual.task(),
                    new TaskVariance(actual.task(), actual.task(), 0, 0, actual.quantity(), actual.hours()),
                    Variances::plus);
        return new ArrayList<>(byTask.values());
    }

    private static TaskVariance plus(TaskVariance one, TaskVariance more) {
        return new TaskVariance(
                one.task(),
                one.name(),
                one.estimatedQuantity() + more.estimatedQuantity(),
                one.estimatedHours() + more.estimatedHours(),
                one.doneQuantity() + more.doneQuantity(),
                one.takenHours() + more.takenHours());
    }
}
