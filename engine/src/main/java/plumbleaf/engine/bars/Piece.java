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
 * @param acrossNm size of the section in the plane of the slanted cuts; zero where an end must not share its cut with the next piece, as with a cope
 */
public record Piece(String id, String group, long longPointNm, Angle first, Angle second, Ends ends, long acrossNm) {
    /** How two slanted ends lie to each other. */
    public enum Ends {
        PARALLEL,
        OPPOSED
    }

    public Piece {
        if (longPointNm <= 0) throw new IllegalArgumentException("Piece " + id + " has no length: " + longPointNm);
    }

    /** A piece that shares no slanted cut with another. */
    public Piece(String id, String group, long longPointNm, Angle first, Angle second, Ends ends) {
        this(id, group, longPointNm, first, second, ends, 0);
    }

    /** A piece with two square ends. */
    public static Piece square(String id, String group, long lengthNm) {
        return new Piece(id, group, lengthNm, Angle.ZERO, Angle.ZERO, Ends.PARALLEL);
    }
}
