package plumbleaf.engine.bars;

import plumbleaf.engine.quantity.Angle;

/**
 * A piece to be cut.
 *
 * @param id of the member it becomes: {@code G1a.m4}
 * @param group what it is built into, so that its pieces lie together: {@code G1a}
 * @param longPointNm overall length, tip to tip, in whole nanometres: what the saw stop is set to
 * @param first angle of the first end from square
 * @param second angle of the second end from square
 * @param ends whether the two slanted ends run parallel or opposed
 */
public record Piece(String id, String group, long longPointNm, Angle first, Angle second, Ends ends) {
    /** How two slanted ends lie to each other. */
    public enum Ends {
        PARALLEL,
        OPPOSED
    }

    public Piece {
        if (longPointNm <= 0) throw new IllegalArgumentException("Piece " + id + " has no length: " + longPointNm);
    }

    /** A piece with two square ends. */
    public static Piece square(String id, String group, long lengthNm) {
        return new Piece(id, group, lengthNm, Angle.ZERO, Angle.ZERO, Ends.PARALLEL);
    }
}
