package plumbleaf.engine.schedule;

import java.util.List;

/**
 * Tasks in order.
 *
 * @param siteDays crew-days on site, whole or half
 * @param cureDays of concrete in warm weather
 */
public record Schedule(List<PlannedTask> tasks, double siteDays, int cureDays) {
    public Schedule {
        tasks = List.copyOf(tasks);
    }
}
