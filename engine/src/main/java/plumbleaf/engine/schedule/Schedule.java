package plumbleaf.engine.schedule;

import java.util.List;

/**
 * Tasks in order.
 *
 * @param siteDays crew-days on site, whole or half
 */
public record Schedule(List<PlannedTask> tasks, double siteDays) {
    public Schedule {
        tasks = List.copyOf(tasks);
    }
}
