package plumbleaf.engine.job;

/**
 * A value that nobody gave.
 *
 * @param field where it belongs in the job file: {@code gates[0].leaf.hingeGap}
 * @param value as it would be written there
 * @param why what it rests on: {@code common practice, no source}
 */
public record Assumption(String field, String value, String why) {}
