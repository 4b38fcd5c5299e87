package plumbleaf.engine.schedule;

import java.time.LocalDate;
import plumbleaf.engine.job.Stated;

/**
 * One stretch of work or waiting.
 *
 * @param key of its phase, or {@code cure}
 * @param hours of one person; zero for waiting
 * @param days crew-days, whole or half; for waiting calendar days
 * @param first day, where a start was given
 * @param last day, the same as the first where it takes a day or less
 */
public record PlannedTask(
        String key, String name, double hours, double days, Stated<LocalDate> first, Stated<LocalDate> last) {}
