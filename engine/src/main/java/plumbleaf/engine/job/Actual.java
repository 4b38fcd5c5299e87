package plumbleaf.engine.job;

import java.time.LocalDate;

/**
 * What a task really took on a day.
 *
 * @param task as the price book calls it
 * @param soil it was dug in; empty otherwise
 * @param quantity done, in what the price book counts the task in
 * @param hours of one person, all together
 */
public record Actual(Stated<LocalDate> date, String task, String soil, double quantity, double hours, String note) {}
