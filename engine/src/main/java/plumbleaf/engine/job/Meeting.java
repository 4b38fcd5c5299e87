package plumbleaf.engine.job;

import plumbleaf.engine.quantity.Length;

/**
 * Where the leaves of a pair meet, and what holds them there.
 *
 * @param strip width of the stop strip on the leaf that opens last, over the meeting gap on the side away from the swing; zero for none
 * @param rod drop rod in the catalogue; left open, the thinnest that holds is taken
 * @param rods one on the leaf that opens last, or one on each leaf
 * @param sleeveAbove how far the mouth of the ground sleeve stands above the ground
 * @param sleeveHole diameter of the hole the sleeve is set in
 * @param sleeveDepth depth of that hole
 * @param stop height above the ground of a centre stop that both leaves close against; zero for none
 * @param topKeeper whether something overhead keeps the tops of both leaves where they meet
 */
public record Meeting(
        Length strip,
        Stated<String> rod,
        int rods,
        Length sleeveAbove,
        Length sleeveHole,
        Length sleeveDepth,
        Length stop,
        boolean topKeeper) {
    public Meeting {
        if (rods < 1 || rods > 2) throw new IllegalArgumentException("A pair has one drop rod or two, not " + rods);
    }

    /** What most yards fit: one rod, a 2 in. strip, a sleeve flush in an 8 in. hole 18 in. deep. Common practice, no source. */
    public static Meeting usual() {
        return new Meeting(
                Length.inches(2),
                Stated.open(),
                1,
                Length.ZERO,
                Length.inches(8),
                Length.inches(18),
                Length.ZERO,
                false);
    }

    public boolean hasStrip() {
        return !strip.isZero();
    }

    public boolean hasStop() {
        return !stop.isZero();
    }

    public Meeting withRod(String id) {
        return new Meeting(strip, Stated.of(id), rods, sleeveAbove, sleeveHole, sleeveDepth, stop, topKeeper);
    }

    public Meeting withRods(int count) {
        return new Meeting(strip, rod, count, sleeveAbove, sleeveHole, sleeveDepth, stop, topKeeper);
    }

    public Meeting withSleeveAbove(Length above) {
        return new Meeting(strip, rod, rods, above, sleeveHole, sleeveDepth, stop, topKeeper);
    }

    public Meeting withSleeveDepth(Length depth) {
        return new Meeting(strip, rod, rods, sleeveAbove, sleeveHole, depth, stop, topKeeper);
    }

    public Meeting withStop(Length height) {
        return new Meeting(strip, rod, rods, sleeveAbove, sleeveHole, sleeveDepth, height, topKeeper);
    }

    public Meeting withTopKeeper(boolean kept) {
        return new Meeting(strip, rod, rods, sleeveAbove, sleeveHole, sleeveDepth, stop, kept);
    }
}
