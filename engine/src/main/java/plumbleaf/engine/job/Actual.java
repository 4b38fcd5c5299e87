package plumbleaf.engine.job;

/** What a task really took. */
public record Actual(String task, double quantity, double hours, String note) {}
