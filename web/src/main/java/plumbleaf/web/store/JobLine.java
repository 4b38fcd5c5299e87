package plumbleaf.web.store;

import java.time.Instant;

/** A job as the desk lists it. */
public record JobLine(JobId id, String title, long version, Instant changedAt) {}
