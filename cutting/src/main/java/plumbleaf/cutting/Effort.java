package plumbleaf.cutting;

/** Steps taken against steps allowed: the only clock here, so that the same task ends the same way everywhere. */
final class Effort {
    private final long allowed;
    private long taken;

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
        return taken >= allowed;
    }

    /** A share of what is left, as an effort of its own; {@link #add} its steps here when it is done. */
    Effort share(long parts) {
        return new Effort(Math.max(1, (allowed - taken) / parts));
    }
}
