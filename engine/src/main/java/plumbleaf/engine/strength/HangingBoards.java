package plumbleaf.engine.strength;

import plumbleaf.engine.quantity.Length;

/**
 * How boards hang under the rails of a bay that has more of them below, or boards longer than asked.
 *
 * @param below how much further down they hang than asked, in the middle of the bay
 * @param lever from the lowest rail's centre to the end of the board that hangs furthest below it
 * @param rails added under those that were asked for
 * @param drop from the lowest rail asked for to the lowest added one
 */
public record HangingBoards(Length below, Length lever, int rails, Length drop) {
    /** As asked, with the lowest rail so far over the boards' ends. */
    public static HangingBoards asked(Length edge) {
        return new HangingBoards(Length.ZERO, edge, 0, Length.ZERO);
    }

    boolean isAsked() {
        return below.isZero() && rails == 0;
    }
}
