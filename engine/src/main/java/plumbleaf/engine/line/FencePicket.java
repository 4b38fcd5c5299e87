package plumbleaf.engine.line;

import plumbleaf.engine.quantity.Length;
import plumbleaf.engine.quantity.Offset;

/**
 * One plumb picket.
 *
 * @param station of its edge nearer the run's start
 * @param width as set: the board's, or less when it is ripped
 * @param bottom elevation of its lower end, on its middle
 * @param length on its middle
 * @param layer which layer of boards it lies in
 */
public record FencePicket(Offset station, Length width, Offset bottom, Length length, Layer layer) {
    /** Where a board lies, seen from the finished face. */
    public enum Layer {
        /** On the rails; the one layer of a fence that has no other. */
        BACK,
        /** On the boards behind, or on the finished face of a shadowbox. */
        FRONT
    }
}
