package plumbleaf.engine.labour;

import java.util.List;
import plumbleaf.engine.finding.Finding;

/** All hours of a job, by task, in the order of the phases. */
public record Labour(List<TaskHours> tasks, List<Finding> findings) {
    public Labour {
        tasks = List.copyOf(tasks);
        findings = List.copyOf(findings);
    }

    /** Hours of one person. */
    public double hours() {
        return tasks.stream().mapToDouble(TaskHours::hours).sum();
    }

    public double hours(Phase phase) {
        return tasks.stream()
                .filter(task -> task.phase() == phase)
                .mapToDouble(TaskHours::hours)
                .sum();
    }
}
