package plumbleaf.engine.sag;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * How far the latch moves, at its place on the leaf, under a load that comes and goes.
 *
 * @param from {@code person} or {@code service gust}
 * @param down + down
 * @param away from the hinges, + away
 */
public record LatchLive(String from, Offset down, Offset away) {
    public Length size() {
        return Length.inches(Math.sqrt(down.inches() * down.inches() + away.inches() * away.inches()));
    }
}
