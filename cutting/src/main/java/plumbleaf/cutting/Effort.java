package plumbleaf.cutting;

/** Steps taken against steps allowed: the only clock here, so that the same task ends the same way everywhere. */
final class Effort {
    private final long allowed;
    private long taken;
    private long partAllowed = Long.MAX_VALUE;

    Effort(long allowed) {
        this.allowed = allowed;
    }

    void add(long steps) {
        taken += steps;
    }

    long taken() {
        return taken;
    }

    boolean spent() {
        return taken >= allowed || taken >= partAllowed;
    }

    /** For one part of the work no farther than this, until {@link #allowAll}. */
    void allowUpTo(long steps) {
        partAllowed = steps;
    }

    void allowAll() {
        partAllowed = Long.MAX_VALUE;
    }
}
