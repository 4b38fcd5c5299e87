package plumbleaf.engine.takeoff;

import plumbleaf.engine.bars.Piece;

/**
 * A piece to be cut from a bar.
 *
 * @param item what it is cut from, as sold
 * @param saw which saw cuts it
 */
public record BarNeed(String item, String name, PartGroup group, Saw saw, Piece piece) {
    /** The saws of a shop; each has its rules. */
    public enum Saw {
        STEEL,
        WOOD
    }
}
