package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.support.Support;

/** A part of a run whose posts are held in another way than the rest: cored into a slab or a wall, on plates, driven. */
public record PostStretch(Length from, Length to, Support posts) {
    public boolean holds(double stationIn) {
        return from.inches() <= stationIn && stationIn <= to.inches();
    }
}
