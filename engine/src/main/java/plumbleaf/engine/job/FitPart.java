package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** A part of a run that follows the ground in another way than the rest: stations of its two ends, where posts stand. */
public record FitPart(Length from, Length to, Fit fit) {
    boolean holds(double stationIn) {
        return from.inches() <= stationIn && stationIn < to.inches();
    }
}
