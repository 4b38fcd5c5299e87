package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** A part of a run, by its stations. */
public record RunStretch(String run, Length from, Length to) {
    /** Whether any of it lies between two stations. */
    public boolean touches(double fromIn, double toIn) {
        return from.inches() < toIn && to.inches() > fromIn;
    }

    /** Whether all between two stations lies in it. */
    public boolean covers(double fromIn, double toIn) {
        return from.inches() <= fromIn && to.inches() >= toIn;
    }
}
