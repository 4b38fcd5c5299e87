package plumbleaf.cutting;

/** Steps taken against steps allowed: the only clock here, so that the same task ends the same way everywhere. */
final class Effort {
    private final long allowed;
    private long taken;
    private long partAllowed = Long.MAX_VALUE;
    private boolean tooFine;

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
        return tooFine || taken >= allowed || taken >= partAllowed;
    }

    /** The sizes are too many and too fine to be worked with to the last unit: what is under way ends here. */
    void foundTooFine() {
        tooFine = true;
    }

    boolean isTooFine() {
        return tooFine;
    }

    /** Work goes on with coarser sizes. */
    void coarser() {
        tooFine = false;
    }

    long left() {
        return Math.max(0, allowed - taken);
    }

    /** For one part of the work no farther than this, until {@link #allowAll}. */
    void allowUpTo(long steps) {
        partAllowed = steps;
    }

    void allowAll() {
        partAllowed = Long.MAX_VALUE;
    }
}
