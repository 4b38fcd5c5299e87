package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/** The concrete of an old post on the line of a run. */
public record Plug(String run, Length station, Length diameter, Length depth, PlugFate fate) {
    Plug pulled() {
        return new Plug(run, station, diameter, depth, PlugFate.PULL);
    }
}
