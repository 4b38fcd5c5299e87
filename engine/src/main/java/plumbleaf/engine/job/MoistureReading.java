package plumbleaf.engine.job;

import java.time.LocalDate;

/** Moisture content of the wood by a meter. */
public record MoistureReading(LocalDate date, String where, double moisture) {}
