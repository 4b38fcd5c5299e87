package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Angle;

/**
 * Which chord of a curve a leg is.
 *
 * @param index from 0
 * @param count of all of them
 */
public record ArcChord(Arc arc, int index, int count) {
    /** How far the walk turns to the left into this chord: half a chord's turn into the first, a whole one into each other. */
    public Angle into() {
        return new Angle(arc.left().radians() / count / (index == 0 ? 2 : 1));
    }

    /** Half a chord's turn, by which what follows leaves the last. */
    public Angle outOf() {
        return new Angle(index == count - 1 ? arc.left().radians() / count / 2 : 0);
    }
}
