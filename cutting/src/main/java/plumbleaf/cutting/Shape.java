package plumbleaf.cutting;

import plumbleaf.engine.bars.Piece;

/**
 * What the saw sees of a piece: how long it is, and how its ends lean. Two pieces of one slant, laid one behind the other, every other one turned, share one
 * slanted cut: the next long point then lies {@code h tan a - k (1 / cos a - 1)} behind the last one, h the size of the section across the cut, k the kerf, which
 * along the bar is k / cos a. Geometry. Check: NestingTest.
 *
 * @param first angle of one end from square, in half degrees, as the saw is set; {@code last} the other
 */
record Shape(long lengthNm, long first, long last, boolean opposed, long acrossNm) {
    private static final double RADIANS = Math.PI / 360;

    static Shape of(Piece piece) {
        long one = Math.round(Math.abs(piece.first().inDegrees()) * 2);
        long other = Math.round(Math.abs(piece.second().inDegrees()) * 2);
        return new Shape(
                piece.longPointNm(),
                one,
                other,
                piece.ends() == Piece.Ends.OPPOSED,
                one == 0 && other == 0 ? 0 : piece.acrossNm());
    }

    /** Length alone: for plans in which nothing laps. */
    Shape plain() {
        return new Shape(lengthNm, 0, 0, false, 0);
    }

    /** How much a cut shared at this angle saves along the bar. */
    private static long saves(long halfDegrees, long acrossNm, long kerfNm) {
        if (acrossNm == 0 || halfDegrees == 0) return 0;
        double angle = halfDegrees * RADIANS;
        double lap = acrossNm * StrictMath.tan(angle) - kerfNm * (1 / StrictMath.cos(angle) - 1);
        return Math.max(0, (long) Math.floor(lap));
    }

    /** What laps in a run of this slant: the least of its two cuts, so that a plan made with it always fits. */
    long leastLap(long kerfNm) {
        return Math.min(saves(first, acrossNm, kerfNm), saves(last, acrossNm, kerfNm));
    }

    /** What both ends together could save at most: half of each cut is theirs. */
    long mostSaved(long kerfNm) {
        return (saves(first, acrossNm, kerfNm) + saves(last, acrossNm, kerfNm) + 1) / 2;
    }

    /** The lap at the cut between piece {@code number} of a run, counted from 0, and the next: the two angles take turns. */
    long lapAfter(int number, long kerfNm) {
        return saves(number % 2 == 0 ? last : first, acrossNm, kerfNm);
    }

    /** Whether two pieces can share a cut: the same two angles, whichever end comes first, the same lean and section. */
    Shape slant() {
        return new Shape(0, Math.min(first, last), Math.max(first, last), opposed, acrossNm);
    }

    /**
     * Whether a piece lies turned against the one its run begins with: every other one, over where the ends are opposed, end for end where the two angles differ.
     *
     * @param number of the piece in its run, counted from 0
     */
    boolean isTurned(int number, Shape start) {
        boolean odd = number % 2 == 1;
        if (opposed) return odd;
        return first != last && odd == (first == start.first);
    }
}
