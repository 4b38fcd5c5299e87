package plumbleaf.cutting;

/** Steps taken against steps allowed: the only clock here, so that the same task ends the same way everywhere. */
final class Effort {
    private long allowed;
    private long taken;
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
        return tooFine || taken >= allowed;
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

    /** Of what is allowed for the part of the work under way. */
    long left() {
        return Math.max(0, allowed - taken);
    }

    /**
     * For one part of the work so many steps from here on, and no more than are left; parts lie within parts.
     *
     * @return what was allowed before, for {@link #allowAgain} when the part is done
     */
    long allowOnly(long steps) {
        long before = allowed;
        allowed = Math.min(allowed, taken + steps);
        return before;
    }

    void allowAgain(long before) {
        allowed = before;
    }
}
