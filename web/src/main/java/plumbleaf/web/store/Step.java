package plumbleaf.web.store;

import java.time.Instant;

/**
 * One line of a job's history.
 *
 * @param kind {@code new}, {@code edit}, {@code undo}, {@code redo}, {@code trash} or {@code restore}
 * @param what the change that made the revision it led to
 */
public record Step(long version, long revision, String kind, String what, String who, Instant at) {}
